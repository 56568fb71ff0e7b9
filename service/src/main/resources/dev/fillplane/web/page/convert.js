/** Takes a request from one system of units to the other. */

import { DIMENSIONS } from './dimensions.js';

const FOOT = 0.3048;
const INCH = 25.4;
const POUND = 0.45359237;
const CUBIC_FOOT = 28.316846592;
const QUART = 0.946352946;
const SQUARE_FOOT = FOOT * FOOT;

/** How many metric units one US unit is; exact by definition (NIST SP 811). */
const METRIC_PER_US = {
  plan: FOOT,
  height: INCH,
  heightVariance: INCH * INCH,
  slope: INCH / FOOT,
  area: SQUARE_FOOT,
  fill: CUBIC_FOOT,
  fillPrice: 1 / CUBIC_FOOT,
  liquid: QUART,
  coverage: SQUARE_FOOT / (4 * QUART),
  mass: POUND,
  density: (POUND * 1000) / CUBIC_FOOT,
  temperatureDifference: 5 / 9,
  airspeed: 1.609344,
  surfaceLoad: (POUND * 9.80665) / SQUARE_FOOT / 1000,
};

/**
 * A value of one dimension in the other units.
 * @param {string} dimension
 * @param {number} value
 * @param {string} to metric or us
 */
export function convert(dimension, value, to) {
  if (dimension === 'temperature') {
    return tidy(to === 'us' ? value * 1.8 + 32 : (value - 32) / 1.8);
  }
  const factor = METRIC_PER_US[dimension];
  return tidy(to === 'us' ? value / factor : value * factor);
}

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

/** There and back again gives the same number. */
function tidy(value) {
  return Number(value.toPrecision(10));
}
