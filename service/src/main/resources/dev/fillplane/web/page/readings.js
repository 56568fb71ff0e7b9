/** The survey as rows to type into: readings by positions of the laser, or plain elevations. */

import { el } from './dom.js';
import { showFields } from './fields.js';

/** @typedef {import('./store.js').Store} Store */

const SHOWN = 250;

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

/** Adds a reading to the last position of the laser. @param {Store} store @param {any} reading */
export function addReading(store, reading) {
  store.change((request) => {
    if (request.survey.elevations) {
      const { reading: elevation, ...point } = reading;
      request.survey.elevations.push({ point: nextName(request.survey), ...point, elevation });
      return;
    }
    const setups = (request.survey.setups ??= [{ id: 'A', readings: [] }]);
    setups[setups.length - 1].readings.push({ point: nextName(request.survey), ...reading });
  });
}

/** Every point of a survey with a place. @param {any} survey @returns {any[]} */
export function pointsOf(survey) {
  const all = survey.elevations ?? (survey.setups ?? []).flatMap((setup) => setup.readings);
  return all.filter((point) => point.x !== undefined && point.y !== undefined);
}

function nextName(survey) {
  const all = survey.elevations ?? survey.setups.flatMap((setup) => setup.readings);
  const taken = new Set(all.map((point) => point.point));
  let i = taken.size + 1;
  while (taken.has(String(i))) {
    i++;
  }
  return String(i);
}

function survey(store) {
  const { setups, elevations, table, benchmarks } = store.request.survey;
  if (table) {
    return [el('p', { 'data-at': '/survey/table' }, `${table.values.length / 3} points from a file.`)];
  }
  const parts = elevations
    ? [rows('Elevations', '/survey/elevations', elevations, 'elevation', store)]
    : (setups ?? []).map((setup, i) =>
        rows(`Laser position ${setup.id}`, `/survey/setups/${i}/readings`, setup.readings, 'reading', store));
  const held = (benchmarks ?? []).map((mark) => `${mark.point} = ${mark.elevation}`).join(', ');
  return held
    ? [...parts, el('p', { class: 'hint', 'data-at': '/survey/benchmarks' }, `Benchmarks: ${held}`)]
    : parts;
}

function rows(name, at, list, height, store) {
  if (list.length > SHOWN) {
    return el('p', { 'data-at': at }, `${name}: ${list.length} points from a file.`);
  }
  const heads = [['Point'], ['x ', unit('plan')], ['y ', unit('plan')], [`${height} `, unit('height')]];
  const remove = (i) => () => store.change((request) => listAt(request, at).splice(i, 1));
  const row = (_, i) =>
    el('tr', {},
      ...['point', 'x', 'y', height].map((key) => el('td', {}, input(`${at}/${i}/${key}`, key, i))),
      el('td', {}, el('button', { type: 'button', class: 'slim', onclick: remove(i), 'aria-label': `Remove row ${i + 1}` }, '\u00d7')));
  const head = el('tr', {}, ...heads.map((parts) => el('th', { scope: 'col' }, ...parts)), el('td'));
  return el('div', { class: 'survey', 'data-at': at },
    el('table', {}, el('caption', {}, `${name}: ${list.length} rows`), el('thead', {}, head), el('tbody', {}, ...list.map(row))),
    el('div', { class: 'notes' }),
    el('button', { type: 'button', onclick: () => store.change((request) => listAt(request, at).push({ point: nextName(request.survey) })) }, 'Add a row'));
}

function listAt(request, at) {
  return at.split('/').slice(1).reduce((tree, key) => tree[key], request);
}

function input(at, key, i) {
  const kind = key === 'point' ? 'word' : 'number';
  const mode = kind === 'number' ? 'decimal' : undefined;
  return el('input', { 'data-at': at, 'data-kind': kind, inputmode: mode, 'aria-label': `${key}, row ${i + 1}` });
}

function unit(dimension) {
  return el('span', { 'data-unit': dimension });
}
