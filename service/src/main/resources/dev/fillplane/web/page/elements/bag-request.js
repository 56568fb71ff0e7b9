/** From what is typed, and what the page of the supplier tells, to a request. */

import { readNumber } from './numbers.js';

/** Values of a data sheet that the page may tell, by attribute. */
const SHEET = {
  'bag-mass': 'bagMass',
  'water-per-bag': 'waterPerBag',
  'yield-per-bag': 'yieldPerBag',
  'primer-coverage': 'primerCoverage',
};

/**
 * A request for bag-counts, or null while something is still empty. Throws an error with its `field`
 * where something cannot be read.
 * @param {any} element
 * @returns {any}
 */
export function askOf(element) {
  const area = number(element, 'area');
  const from = number(element, 'from');
  const to = number(element, 'to');
  if (area === null || (from === null && to === null)) {
    return null;
  }
  const thickness =
    from !== null && to !== null && from !== to
      ? { thicknessRange: { from: Math.min(from, to), to: Math.max(from, to) } }
      : { thickness: from ?? to };
  const absorbency = element.shadowRoot.getElementById('absorbency').value || 'normal';
  return { units: element.units, area, ...thickness, material: material(element), absorbency };
}

function material(element) {
  const id = element.getAttribute('material') ?? (element.hasAttribute('bag-mass') ? null : element.shadowRoot.getElementById('material').value);
  const told = Object.entries(SHEET)
    .filter(([attribute]) => element.hasAttribute(attribute))
    .map(([attribute, name]) => [name, Number(element.getAttribute(attribute))]);
  return { ...(id ? { id } : {}), ...Object.fromEntries(told) };
}

/** What stands in a field, or null where it is empty. */
function number(element, name) {
  const text = element.shadowRoot.getElementById(name).value;
  if (text.trim() === '') {
    return null;
  }
  try {
    const value = readNumber(text, element.units);
    if (value > 0) {
      return value;
    }
  } catch (error) {
    throw Object.assign(error, { field: name });
  }
  throw Object.assign(new Error('Type a number above 0.'), { field: name });
}
