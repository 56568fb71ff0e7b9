/** The rooms as tables to type into, one after the other. */

import { el } from './dom.js';
import { showFields } from './fields.js';
import { counted } from './format.js';
import { addRow, removeRow } from './rows.js';

/** @typedef {import('./store.js').Store} Store */

const KINDS = [
  ['exit', 'exit (people and bags leave here)'],
  ['doorway', 'doorway to another room'],
  ['threshold', 'threshold to a floor that goes on'],
];

/**
 * Shows the rooms whenever they come or go.
 * @param {HTMLElement} list
 * @param {Store} store
 */
export function showRooms(list, store) {
  let shown = /** @type {any[]} */ ([]);
  store.listen(({ structure }) => {
    if (structure) {
      const { rooms } = store.request;
      const open = [...list.children].map((part) => /** @type {any} */ (part).open);
      // One that was not here before is new, or the same in other units at its old place.
      const before = (room, i) => (shown.includes(room) ? shown.indexOf(room) : i);
      list.replaceChildren(...rooms.map((room, i) => roomPart(room, i, store, open[before(room, i)])));
      shown = [...rooms];
      showFields(list, store);
    }
  });
}

/** Adds a room; without corners they are typed. @param {Store} store @param {number[][]} [ring] */
export function addRoom(store, ring) {
  store.change((request) => {
    request.rooms.push({
      id: unused('room', request.rooms.map((room) => room.id)),
      outline: { type: 'Polygon', coordinates: ring ? [ring] : [] },
    });
  });
}

/** Adds an opening to a room. @param {Store} store @param {number} room @param {any} opening */
export function addOpening(store, room, opening) {
  store.change((request) => (request.rooms[room].openings ??= []).push(named(request.rooms[room], opening)));
}

function named({ openings = [] }, opening) {
  return { id: unused(opening.kind === 'exit' ? 'way out' : 'door', openings.map(({ id }) => id)), ...opening };
}

function typeOpening(store, room) {
  const told = (store.request.rooms[room].openings ??= []);
  addRow(store, `/rooms/${room}/openings`, named({ openings: told }, { kind: 'exit' }));
}

function unused(word, taken) {
  for (let i = 1; ; i++) {
    const name = i === 1 && word !== 'room' ? word : `${word} ${i}`;
    if (!taken.includes(name)) {
      return name;
    }
  }
}

function roomPart(room, i, store, open) {
  const at = `/rooms/${i}`;
  const openings = (room.openings ?? []).map((_, k) => openingPart(i, k, store));
  return el(
    'details', { class: 'room', 'data-at': at, open: open ?? room.outline.coordinates.length === 0 },
    el('summary', {}, `Room ${i + 1}: ${room.id}, ${openings.length === 0 ? 'no opening yet' : counted(openings.length, 'opening')}`),
    el('div', { class: 'row' },
      field('Name', el('input', { 'data-at': `${at}/id`, 'data-kind': 'word', maxlength: 80 })),
      field('Base', choice(`${at}/substrate`, [['', 'unknown'], ...words('concrete', 'screed', 'tile', 'wood', 'gypsum')])),
      field('Base absorbs', choice(`${at}/absorbency`, [['', 'normally'], ['low', 'little'], ['high', 'much']], 'normal')),
      field('Floor laid in year', el('input', { 'data-at': `${at}/built`, 'data-kind': 'integer', inputmode: 'numeric' }))),
    field(['Corners, one a line: x y in ', el('span', { 'data-unit': 'plan' })],
      el('textarea', { 'data-at': `${at}/outline/coordinates`, 'data-kind': 'corners', rows: 5, spellcheck: 'false' }),
      'A blank line before the corners of an island, such as a column.'),
    ...openings,
    el('div', { class: 'notes' }),
    el('div', { class: 'buttons' },
      el('button', { type: 'button', 'data-add': `${at}/openings`, onclick: () => typeOpening(store, i) }, 'Add an opening'),
      el('button', { type: 'button', onclick: () => removeRow(store, '/rooms', i) }, `Remove room ${i + 1}`)),
  );
}

function openingPart(room, k, store) {
  const at = `/rooms/${room}/openings/${k}`;
  const rooms = store.request.rooms.filter((_, i) => i !== room).map(({ id }) => [id, id]);
  const position = (end) =>
    el('input', { 'data-at': `${at}/${end}`, 'data-kind': 'position', placeholder: 'x y' });
  return el(
    'fieldset', { class: 'opening', 'data-at': at },
    el('legend', {}, `Opening ${k + 1} of room ${room + 1}`),
    el('div', { class: 'row' },
      field('Name', el('input', { 'data-at': `${at}/id`, 'data-kind': 'word', maxlength: 80 })),
      field('What it is', choice(`${at}/kind`, KINDS)),
      field('From x y', position('from')),
      field('To x y', position('to')),
      field('Leads into', choice(`${at}/into`, [['', 'nothing levelled'], ...rooms]))),
    el('div', { class: 'notes' }),
    el('button', { type: 'button', onclick: () => removeRow(store, `/rooms/${room}/openings`, k) },
      `Remove opening ${k + 1}`),
  );
}

function words(...all) {
  return all.map((word) => [word, word]);
}

/** @param {any} name @param {any} input @param {string} [hint] */
function field(name, input, hint) {
  const label = el('label', {}, el('span', { class: 'name' }, ...[name].flat()), input);
  if (!hint) {
    return el('div', {}, label);
  }
  const id = `hint${input.dataset.at.replaceAll('/', '-')}`;
  input.setAttribute('aria-describedby', id);
  return el('div', {}, label, el('p', { class: 'hint', id }, hint));
}

function choice(at, options, unlessTold) {
  return el('select', { 'data-at': at, 'data-kind': 'word', 'data-default': unlessTold },
    ...options.map(([value, text]) => el('option', { value }, text)));
}
