/** The order of pouring: bays with the age of their edges against the limit, and the batches. */

import { el, table } from './dom.js';
import { counted, fixed, jug, quantity } from './format.js';

/** @param {any} plan */
export function orderPart(plan) {
  const { pour, mix, units } = plan;
  return el('div', {},
    el('ol', { class: 'bays' }, ...pour.bays.map((bay) => bayItem(bay, mix.healingTime, units))),
    el('p', { class: 'hint' }, `A bar ends at the oldest edge of the part; the mark is ${fixed(mix.healingTime)} min, when an edge no longer closes.`),
    el('details', {}, el('summary', {}, `All ${counted(pour.batches.length, 'batch')}`), batchTable(plan)));
}

function bayItem(bay, limit, units) {
  const first = bay.ribbons[0];
  const last = bay.ribbons[bay.ribbons.length - 1];
  const oldest = Math.max(...bay.ribbons.map((ribbon) => ribbon.edgeAge));
  const depth = bay.ribbons.reduce((sum, ribbon) => sum + ribbon.meanDepth, 0) / bay.ribbons.length;
  return el('li', {},
    el('strong', {}, bay.id), bay.lift > 1 ? `, lift ${bay.lift}` : '',
    `: ribbons ${first.order} to ${last.order}, minute ${Math.round(first.start)} to ${Math.round(last.end)}, about ${quantity(units, 'height', depth)} deep`,
    edgeBar(oldest, limit));
}

function edgeBar(oldest, limit) {
  const scale = Math.max(oldest, limit) * 1.15;
  const bar = el('span', { class: `bar ${oldest > limit ? 'over' : ''}` });
  const mark = el('span', { class: 'mark' });
  bar.style.width = `${(100 * oldest) / scale}%`;
  mark.style.left = `${(100 * limit) / scale}%`;
  return el('div', { class: 'edge' },
    el('div', { class: 'track', 'aria-hidden': 'true' }, bar, mark),
    el('span', {}, `oldest edge ${fixed(oldest)} min${oldest > limit ? ', too old' : ''}`));
}

function batchTable({ pour, units }) {
  const rows = pour.batches.map((batch, i) => [
    String(i + 1),
    batch.bay,
    batch.firstRibbon === batch.lastRibbon ? String(batch.firstRibbon) : `${batch.firstRibbon} to ${batch.lastRibbon}`,
    String(batch.bags),
    jug(units, batch.water),
    fixed(batch.mixStart),
    fixed(batch.placed),
    batch.edgeAge === undefined ? '' : fixed(batch.edgeAge),
  ]);
  return table('Batches, minutes from the start of the work',
    ['Batch', 'Part', 'Ribbon', 'Bags', 'Water', 'Open bags', 'Placed', 'Oldest edge'], rows);
}
