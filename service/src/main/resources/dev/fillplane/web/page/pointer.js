/** JSON Pointers (RFC 6901) over a request: `/rooms/0/id`. */

/** @param {string} pointer */
export function parts(pointer) {
  return pointer
    .replace(/^#/, '')
    .split('/')
    .slice(1)
    .map((part) => part.replace(/~1/g, '/').replace(/~0/g, '~'));
}

/**
 * The value at a pointer, or undefined.
 * @param {any} tree
 * @param {string} pointer
 */
export function valueAt(tree, pointer) {
  return parts(pointer).reduce((value, part) => (value == null ? undefined : value[part]), tree);
}

/**
 * Puts a value; undefined takes it away, and objects that are then empty with it.
 * @param {any} tree
 * @param {string} pointer
 * @param {unknown} value
 */
export function put(tree, pointer, value) {
  putParts(tree, parts(pointer), value);
}

function putParts(tree, [part, ...rest], value) {
  if (rest.length === 0) {
    if (value === undefined) {
      delete tree[part];
    } else {
      tree[part] = value;
    }
    return;
  }
  if (tree[part] === undefined) {
    if (value === undefined) {
      return;
    }
    tree[part] = {};
  }
  putParts(tree[part], rest, value);
  if (isEmptyObject(tree[part]) && !Array.isArray(tree)) {
    delete tree[part];
  }
}

function isEmptyObject(value) {
  return typeof value === 'object' && !Array.isArray(value) && Object.keys(value).length === 0;
}
