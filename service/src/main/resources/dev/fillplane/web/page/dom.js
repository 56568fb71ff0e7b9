/** Makes elements; text goes in as text, never as markup. */

const SVG = 'http://www.w3.org/2000/svg';

/**
 * An element of the page.
 * @param {string} tag
 * @param {Record<string, unknown>} [attributes] an `on...` is a listener; false and undefined are left out
 * @param {...(Node | string | number | null | undefined)} children
 * @returns {any}
 */
export function el(tag, attributes = {}, ...children) {
  return filled(document.createElement(tag), attributes, children);
}

/**
 * An element of a drawing.
 * @param {string} tag
 * @param {Record<string, unknown>} [attributes]
 * @param {...(Node | string)} children
 * @returns {any}
 */
export function svg(tag, attributes = {}, ...children) {
  return filled(document.createElementNS(SVG, tag), attributes, children);
}

function filled(element, attributes, children) {
  for (const [name, value] of Object.entries(attributes)) {
    if (name.startsWith('on')) {
      element.addEventListener(name.slice(2), value);
    } else if (value !== false && value !== undefined) {
      element.setAttribute(name, value === true ? '' : String(value));
    }
  }
  element.append(...children.filter((child) => child !== null && child !== undefined).map(textOr));
  return element;
}

function textOr(child) {
  return typeof child === 'number' ? String(child) : child;
}

/**
 * The element with an id, which is there.
 * @param {string} id
 * @returns {any}
 */
export function byId(id) {
  return document.getElementById(id);
}

/**
 * A table with a caption for readers of the screen.
 * @param {string} caption
 * @param {string[]} heads
 * @param {(Node | string | number)[][]} rows the first cell of each names the row
 */
export function table(caption, heads, rows) {
  const head = el('tr', {}, ...heads.map((text) => el('th', { scope: 'col' }, text)));
  const body = rows.map(([first, ...rest]) =>
    el('tr', {}, el('th', { scope: 'row' }, first), ...rest.map((cell) => el('td', {}, cell))),
  );
  return el(
    'div',
    { class: 'scroll', tabindex: 0, role: 'region', 'aria-label': caption },
    el('table', {}, el('caption', {}, caption), el('thead', {}, head), el('tbody', {}, ...body)),
  );
}
