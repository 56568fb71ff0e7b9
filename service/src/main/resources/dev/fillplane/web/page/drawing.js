/** Drawing by pointer or keys: a room corner by corner, an opening, a reading. */

import { byId } from './dom.js';
import { drawBoard } from './board.js';
import { ViewBox } from './view-box.js';
import { distance, openingNear } from './geometry.js';
import { addOpening, addRoom } from './rooms.js';
import { addReading, pointsOf } from './readings.js';
import { readNumber } from './kinds.js';
import { unitName } from './format.js';

/** @typedef {import('./store.js').Store} Store */
/** @typedef {import('./geometry.js').Point} Point */

const WIDTH_OF_OPENING = { metric: 0.9, us: 3 };
const HINTS = {
  room: 'Set the corners one after the other; close the room on its first corner.',
  exit: 'Point at the wall where people and bags leave the floor.',
  doorway: 'Point at the wall that the doorway is in.',
  reading: 'Point at the place of a reading, then type what the rod says.',
};
const ARROWS = { ArrowLeft: [-1, 0], ArrowRight: [1, 0], ArrowUp: [0, 1], ArrowDown: [0, -1] };

export class Drawing {
  /** @type {Point[]} */
  corners = [];
  /** @type {Point | null} */
  cursor = null;
  #wider = 1;
  #tool = 'room';

  /** @param {Store} store @param {(text: string) => void} say */
  constructor(store, say) {
    this.store = store;
    this.say = say;
    this.board = byId('board');
    this.#bind();
    store.listen(() => this.show());
  }

  show() {
    const { request } = this.store;
    if (this.corners.length === 0) {
      const rings = request.rooms.flatMap((room) => (room.outline?.coordinates ?? []).flat());
      const points = [...rings, ...pointsOf(request.survey).map(({ x, y }) => [x, y])];
      const width = Math.max(280, this.board.clientWidth);
      this.view = new ViewBox(this.store.units, points, width, Math.round(width * 0.66), this.#wider);
    }
    drawBoard(this.board, this.view, request, this);
    byId('close-room').disabled = this.corners.length < 3;
    byId('undo-corner').disabled = this.corners.length === 0;
  }

  #bind() {
    byId('tools').addEventListener('change', (event) => this.#use(event.target.value));
    byId('close-room').addEventListener('click', () => this.#close());
    byId('undo-corner').addEventListener('click', () => this.#undo());
    byId('board-wider').addEventListener('click', () => this.#zoom(1.5));
    byId('board-closer').addEventListener('click', () => this.#zoom(1 / 1.5));
    byId('add-reading').addEventListener('click', () => this.#takeReading());
    byId('new-reading').addEventListener('keydown', (event) => event.key === 'Enter' && this.#takeReading());
    this.board.addEventListener('pointermove', (event) => this.#move(event));
    this.board.addEventListener('pointerleave', () => this.#forget());
    this.board.addEventListener('click', (event) => this.#move(event) || this.#act());
    this.board.addEventListener('keydown', (event) => this.#key(event));
    new ResizeObserver(() => this.show()).observe(this.board);
  }

  #use(tool) {
    this.#tool = tool;
    this.corners = [];
    byId('reading-at').hidden = true;
    byId('board-hint').textContent = HINTS[tool];
    this.show();
  }

  #zoom(by) {
    this.#wider *= by;
    this.show();
  }

  #move(event) {
    const box = this.board.getBoundingClientRect();
    const scale = this.view.width / box.width;
    const at = this.view.toPlan([(event.clientX - box.left) * scale, (event.clientY - box.top) * scale]);
    this.cursor = this.view.snap(at, [...this.corners.slice(0, 1), ...this.#known()]);
    this.show();
  }

  #forget() {
    if (document.activeElement !== this.board) {
      this.cursor = null;
      this.show();
    }
  }

  #known() {
    return this.#tool === 'room' ? this.store.request.rooms.flatMap((room) => (room.outline?.coordinates ?? []).flat()) : [];
  }

  #key(event) {
    const arrow = ARROWS[event.key];
    if (arrow) {
      const step = this.view.step * (event.shiftKey ? 10 : 1);
      const from = this.cursor ?? this.view.snap(this.view.middle, []);
      this.cursor = this.view.snap([from[0] + arrow[0] * step, from[1] + arrow[1] * step], []);
      this.say(`${this.cursor.join(', ')} ${unitName(this.store.units, 'plan')}`);
      this.show();
    } else if (event.key === 'Enter' || event.key === ' ') {
      this.#act();
    } else if (event.key === 'Backspace') {
      this.#undo();
    } else if (event.key === 'Escape') {
      this.#use(this.#tool);
    } else {
      return;
    }
    event.preventDefault();
  }

  #act() {
    if (this.cursor === null) {
      return;
    }
    if (this.#tool === 'room') {
      this.#corner(this.cursor);
    } else if (this.#tool === 'reading') {
      this.#askReading();
    } else {
      this.#opening(this.#tool, this.cursor);
    }
  }

  #corner(p) {
    const [first] = this.corners;
    if (this.corners.length >= 3 && distance(first, p) < this.view.step / 2) {
      this.#close();
      return;
    }
    this.corners.push(p);
    this.say(`Corner ${this.corners.length} at ${p.join(', ')}.`);
    this.show();
  }

  #close() {
    if (this.corners.length >= 3) {
      const ring = [...this.corners, this.corners[0]];
      this.corners = [];
      addRoom(this.store, ring);
      this.say('The room is closed. Mark the way out next.');
    }
  }

  #undo() {
    this.corners.pop();
    this.show();
  }

  #opening(kind, p) {
    const found = openingNear(this.store.request.rooms, p, WIDTH_OF_OPENING[this.store.units]);
    if (!found) {
      this.say('Draw a room first; an opening is in a wall.');
      return;
    }
    const { room, from, to, into } = found;
    const opening = { kind, from, to, ...(kind === 'doorway' && into !== undefined ? { into } : {}) };
    addOpening(this.store, room, opening);
    this.say(`Opening ${kind} in room ${room + 1}.`);
  }

  #askReading() {
    byId('reading-at').hidden = false;
    byId('reading-place').textContent = `Reading at ${this.cursor.join(', ')} ${unitName(this.store.units, 'plan')}`;
    this.place = this.cursor;
    byId('new-reading').focus();
  }

  #takeReading() {
    const field = byId('new-reading');
    try {
      const reading = readNumber(field.value, this.store.units);
      const [x, y] = this.place;
      field.removeAttribute('aria-invalid');
      field.value = '';
      byId('reading-at').hidden = true;
      addReading(this.store, { x, y, reading });
      this.say(`Reading ${reading} taken.`);
      this.board.focus();
    } catch (error) {
      field.setAttribute('aria-invalid', 'true');
      this.say(error.message);
    }
  }
}
