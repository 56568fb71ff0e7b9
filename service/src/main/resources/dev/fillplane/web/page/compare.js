/** Two days side by side: the same job, hot and cool, one request each. */

import { byId, table } from './dom.js';
import { fixed, quantity } from './format.js';
import { readNumber } from './kinds.js';
import { convert } from './convert.js';
import { post } from './service.js';

/** @typedef {import('./store.js').Store} Store */

const NAMES = ['air', 'floor', 'powder', 'water'];
const DAYS = { hot: [32, 30, 30, 22], cool: [18, 16, 18, 12] };

/** @param {Store} store */
export function bindCompare(store) {
  let units = '';
  store.listen(() => {
    if (store.units !== units) {
      units = store.units;
      showDays(units);
    }
  });
  byId('compare').addEventListener('click', () => compare(store));
}

function showDays(units) {
  for (const [day, values] of Object.entries(DAYS)) {
    NAMES.forEach((name, i) => {
      byId(`${day}-${name}`).value = units === 'us' ? Math.round(convert('temperature', values[i], 'us')) : values[i];
    });
  }
}

async function compare(store) {
  const place = byId('compared');
  place.textContent = 'Planning both days\u2026';
  try {
    const [hot, cool] = await Promise.all(['hot', 'cool'].map((day) => planOf(day, store)));
    place.replaceChildren(sideBySide(hot, cool));
  } catch (error) {
    place.textContent = error.findings?.[0]?.detail ?? error.message;
  }
}

async function planOf(day, store) {
  const told = Object.fromEntries(NAMES.map((name) => [name, readNumber(byId(`${day}-${name}`).value, store.units)]));
  const request = structuredClone(store.request);
  request.conditions = { ...request.conditions, ...told };
  return (await post('/v1/plans', request)).json();
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
