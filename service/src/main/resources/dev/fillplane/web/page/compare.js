/** Two days side by side: the same job, hot and cool, one request each. */

import { convertField, readNumber } from '../elements/numbers.js';
import { byId, table } from './dom.js';
import { fixed, quantity } from './format.js';
import { post } from './service.js';
import { withoutBegun } from './survey.js';

/** @typedef {import('./store.js').Store} Store */

const NAMES = ['air', 'floor', 'powder', 'water'];
const DAYS = { hot: [32, 30, 30, 22], cool: [18, 16, 18, 12] };

/** @param {Store} store */
export function bindCompare(store) {
  let units = 'metric';
  fields().forEach(({ field, usual }) => (field.value = usual));
  store.listen(() => {
    if (store.units !== units) {
      units = store.units;
      fields().forEach(({ field }) => convertField(field, 'temperature', units));
    }
  });
  byId('compare').addEventListener('click', () => compare(store));
}

function fields() {
  return Object.entries(DAYS).flatMap(([day, values]) =>
    NAMES.map((name, i) => ({ day, name, field: byId(`${day}-${name}`), usual: String(values[i]) })));
}

async function compare(store) {
  const place = byId('compared');
  try {
    const days = Object.keys(DAYS).map((day) => requestOf(day, store));
    place.textContent = 'Planning both days\u2026';
    const [hot, cool] = await Promise.all(days.map(async (day) => (await post('v1/plans', day)).json()));
    place.replaceChildren(sideBySide(hot, cool));
  } catch (error) {
    place.textContent = error.findings?.[0]?.detail ?? error.message;
  }
}

function requestOf(day, store) {
  const told = fields().filter((field) => field.day === day)
    .map(({ name, field }) => [name, temperature(field, store.units)]);
  const request = withoutBegun(store.request);
  return { ...request, conditions: { ...request.conditions, ...Object.fromEntries(told) } };
}

function temperature(field, units) {
  field.removeAttribute('aria-invalid');
  try {
    return readNumber(field.value, units);
  } catch (error) {
    field.setAttribute('aria-invalid', 'true');
    field.focus();
    throw error;
  }
}

function sideBySide(hot, cool) {
  const rows = [
    ['Wet edge', (plan) => plan.pour.verdict],
    ['Mix', (plan) => quantity(plan.units, 'temperature', plan.mix.mixTemperature)],
    ['Working time', (plan) => `${fixed(plan.mix.workingTime)} min`],
    ['An edge closes for', (plan) => `${fixed(plan.mix.healingTime)} min`],
    ['Oldest edge', (plan) => `${fixed(oldestEdge(plan))} min`],
    ['Bags to order', (plan) => String(plan.quantities.bags.order)],
    ['What would make it hold', (plan) => plan.pour.changes[0]?.text ?? '\u2013'],
  ];
  return table('Hot against cool', ['', 'Hot day', 'Cool day'], rows.map(([name, of]) => [name, of(hot), of(cool)]));
}

function oldestEdge({ pour }) {
  return Math.max(0, ...pour.bays.flatMap((bay) => bay.ribbons.map((ribbon) => ribbon.edgeAge)));
}
