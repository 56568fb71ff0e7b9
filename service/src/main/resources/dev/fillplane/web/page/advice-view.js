/** What would make it hold, which ways there are, what can hurt somebody. */

import { el, table } from './dom.js';
import { counted, duration, quantity } from './format.js';

const WAYS = {
  'no-pour': 'Lay the covering as it is',
  'grind-and-patch': 'Grind the humps, patch the hollows',
  flat: 'Pour flat, to the plane of least fill',
  level: 'Pour level',
};
const PASSES = { within: 'flat enough', unclear: 'unclear, read closer', over: 'not flat enough' };
const THEN = { holds: 'then it holds', tight: 'then it is tight', breaks: 'still breaks' };

/** @param {any} plan */
export function changesPart({ pour }) {
  if (pour.verdict === 'holds') {
    return el('p', {}, 'Nothing: it holds as it is.');
  }
  if (pour.changes.length === 0) {
    return el('p', {}, 'No small change mends it. Pour a smaller part, or another day.');
  }
  return el('ul', { class: 'changes' }, ...pour.changes.map((change) =>
    el('li', {}, el('strong', {}, THEN[change.verdict] ?? change.verdict), ` \u2013 ${change.text}`)));
}

/** Whether the floor needs a pour at all. @param {any} plan */
export function waysPart({ options, grinding, units, flatness }) {
  const rows = options.map((option) => [
    WAYS[option.name] ?? option.name,
    PASSES[option.passes] ?? option.passes,
    String(option.bags),
    option.grindArea > 0 ? quantity(units, 'area', option.grindArea) : '\u2013',
    option.minutes > 0 ? duration(option.minutes) : '\u2013',
  ]);
  const savings = grinding.savings.slice(0, 2).map((saving) => el('li', {},
    `Grind ${quantity(units, 'area', saving.area)} by up to ${quantity(units, 'height', saving.height)}: saves ${counted(saving.bags, 'bag')}.`));
  return el('div', {},
    el('p', {}, `The largest gap of the floor as it is: ${quantity(units, 'height', flatness.before.gap)} under a straightedge of ${quantity(units, 'plan', flatness.limit.straightedge)}; the limit is ${quantity(units, 'height', flatness.limit.gap)}.`),
    table('Ways to deal with this floor', ['Way', 'Afterwards', 'Bags', 'To grind', 'Work of all people'], rows),
    savings.length > 0 ? el('ul', {}, ...savings) : null);
}

/** @param {any} plan */
export function safetyPart({ safety }) {
  return el('ul', { class: 'safety' }, ...safety.map((note) =>
    el('li', { class: note.severity }, el('strong', {}, `${note.severity}: `), note.text)));
}
