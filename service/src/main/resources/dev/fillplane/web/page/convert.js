/** Takes a request from one system of units to the other. */

import { convert } from '../elements/numbers.js';
import { DIMENSIONS } from './dimensions.js';

/**
 * The same request in other units. A table of many points is converted by its columns.
 * @param {any} request
 * @param {'metric' | 'us'} to
 */
export function convertRequest(request, to) {
  const copy = structuredClone(request);
  for (const [dimension, pointers] of Object.entries(DIMENSIONS)) {
    for (const pointer of pointers) {
      convertAt(copy, pointer.split('/').slice(1), (value) => inKind(dimension, value, to));
    }
  }
  const { columns, values } = copy.survey?.table ?? { columns: [], values: [] };
  values.forEach((value, i) => {
    const plan = ['x', 'y'].includes(columns[i % columns.length]);
    values[i] = convert(plan ? 'plan' : 'height', value, to);
  });
  return { ...copy, units: to };
}

/**
 * A place on plan in other units.
 * @param {import('./geometry.js').Point} place
 * @param {'metric' | 'us'} to
 */
export function convertPlace(place, to) {
  return /** @type {import('./geometry.js').Point} */ (place.map((value) => convert('plan', value, to)));
}

function convertAt(tree, [part, ...rest], change) {
  if (tree === undefined || tree === null) {
    return;
  }
  for (const key of part === '*' ? Object.keys(tree) : [part]) {
    if (rest.length > 0) {
      convertAt(tree[key], rest, change);
    } else if (tree[key] !== undefined) {
      tree[key] = change(tree[key]);
    }
  }
}

/** Prices are decimal strings. */
function inKind(dimension, value, to) {
  return typeof value === 'string'
    ? String(Number(convert(dimension, Number(value), to).toFixed(6)))
    : convert(dimension, value, to);
}
