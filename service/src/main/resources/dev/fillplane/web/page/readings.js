/** The survey as rows to type into: readings by positions of the laser, or plain elevations. */

import { el } from './dom.js';
import { showFields } from './fields.js';
import { addRow, removeRow } from './rows.js';
import { nextName, nextSetup } from './survey.js';

/** @typedef {import('./store.js').Store} Store */

const SHOWN = 250;
const SETUPS = '/survey/setups';

/**
 * Shows the survey whenever rows come or go.
 * @param {HTMLElement} list
 * @param {Store} store
 */
export function showReadings(list, store) {
  store.listen(({ structure }) => {
    if (structure) {
      list.replaceChildren(...survey(store));
      showFields(list, store);
    }
  });
}

function survey(store) {
  const { setups, elevations, table, benchmarks } = store.request.survey;
  if (table) {
    return [el('p', { 'data-at': '/survey/table' }, `${table.values.length / 3} points from a file.`)];
  }
  const parts = elevations
    ? [rows('Elevations', '/survey/elevations', elevations, 'elevation', store)]
    : positions(setups ?? [], store);
  const held = (benchmarks ?? []).map((mark) => `${mark.point} = ${mark.elevation}`).join(', ');
  return held
    ? [...parts, el('p', { class: 'hint', 'data-at': '/survey/benchmarks' }, `Benchmarks: ${held}`)]
    : parts;
}

/** One position of the laser is its rows; of several, each has a name. */
function positions(setups, store) {
  const parts = setups.length === 1
    ? [rows(`Laser position ${setups[0].id}`, `${SETUPS}/0/readings`, setups[0].readings, 'reading', store)]
    : setups.map((setup, i) => position(setup, i, store));
  const add = () => addRow(store, SETUPS, { id: nextSetup(setups), readings: [{}] });
  return [...parts,
    el('button', { type: 'button', 'data-add': SETUPS, onclick: add, 'aria-describedby': 'tie-hint' }, 'Add a laser position'),
    el('p', { class: 'hint', id: 'tie-hint' }, 'Where the laser was moved: read one point again under its old name, two far apart if you can.')];
}

function position(setup, i, store) {
  const name = el('input', { 'data-at': `${SETUPS}/${i}/id`, 'data-kind': 'word', maxlength: 80 });
  return el('fieldset', { class: 'opening', 'data-at': `${SETUPS}/${i}` },
    el('legend', {}, `Laser position ${i + 1}`),
    el('div', {}, el('label', {}, el('span', { class: 'name' }, 'Name'), name)),
    rows('Readings', `${SETUPS}/${i}/readings`, setup.readings, 'reading', store, ` of position ${i + 1}`),
    el('div', { class: 'notes' }),
    el('button', { type: 'button', onclick: () => removeRow(store, SETUPS, i) }, `Remove position ${i + 1}`));
}

function rows(name, at, list, height, store, whose = '') {
  if (list.length > SHOWN) {
    return el('p', { 'data-at': at }, `${name}: ${list.length} points from a file.`);
  }
  const heads = [['Point'], ['x ', unit('plan')], ['y ', unit('plan')], [`${height} `, unit('height')]];
  const row = (_, i) => {
    const which = `row ${i + 1}${whose}`;
    const remove = { type: 'button', class: 'slim', 'aria-label': `Remove ${which}`, onclick: () => removeRow(store, at, i) };
    return el('tr', {},
      ...['point', 'x', 'y', height].map((key) => el('td', {}, input(`${at}/${i}/${key}`, key, which))),
      el('td', {}, el('button', remove, '\u00d7')));
  };
  const head = el('tr', {}, ...heads.map((parts) => el('th', { scope: 'col' }, ...parts)), el('td'));
  const add = () => addRow(store, at, { point: nextName(store.request.survey) });
  return el('div', { class: 'survey', 'data-at': at },
    el('table', {}, el('caption', {}, `${name}: ${list.length} rows`), el('thead', {}, head), el('tbody', {}, ...list.map(row))),
    el('div', { class: 'notes' }),
    el('button', { type: 'button', 'data-add': at, onclick: add }, 'Add a row'));
}

function input(at, key, which) {
  const kind = key === 'point' ? 'word' : 'number';
  const mode = kind === 'number' ? 'decimal' : undefined;
  return el('input', { 'data-at': at, 'data-kind': kind, inputmode: mode, 'aria-label': `${key}, ${which}` });
}

function unit(dimension) {
  return el('span', { 'data-unit': dimension });
}
