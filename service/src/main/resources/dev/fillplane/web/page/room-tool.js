/** Draws a room corner by corner. */

import { byId } from './dom.js';
import { convertPlace } from './convert.js';
import { distance } from './geometry.js';
import { addRoom } from './rooms.js';

/** @typedef {import('./store.js').Store} Store */
/** @typedef {import('./geometry.js').Point} Point */

/** Two corners nearer than this are one, in plan units. */
const SAME = 0.04;

/** Every corner of some rooms. @param {any[]} rooms @returns {Point[]} */
export function cornersOf(rooms) {
  return rooms.flatMap((room) => (room.outline?.coordinates ?? []).flat());
}

export class RoomTool {
  hint = 'Set the corners one after the other; close the room on its first corner.';
  #corners = /** @type {Point[]} */ ([]);

  /** @param {Store} store @param {(text: string) => void} say @param {() => void} show */
  constructor(store, say, show) {
    this.store = store;
    this.say = say;
    this.redraw = show;
    byId('close-room').addEventListener('click', () => this.#close());
    byId('undo-corner').addEventListener('click', () => this.undo());
  }

  /** What the cross snaps to: its own first corner, and those of rooms that may touch. */
  corners() {
    return [...this.#corners.slice(0, 1), ...cornersOf(this.store.request.rooms)];
  }

  /** The corners set so far. */
  get unfinished() {
    return this.#corners;
  }

  /** @param {Point} p */
  act(p) {
    if (this.#corners.length >= 3 && distance(this.#corners[0], p) < SAME) {
      this.#close();
      return;
    }
    this.#corners.push(p);
    this.say(`Corner ${this.#corners.length} at ${p.join(', ')}.`);
    this.#show();
  }

  undo() {
    this.#corners.pop();
    this.#show();
  }

  stop() {
    this.#corners = [];
    this.#show();
  }

  /** @param {'metric' | 'us'} units */
  convertTo(units) {
    this.#corners = this.#corners.map((corner) => convertPlace(corner, units));
  }

  #close() {
    const ring = [...this.#corners, this.#corners[0]];
    this.#corners = [];
    addRoom(this.store, ring);
    this.#show();
    this.say('The room is closed. Mark the way out next.');
  }

  #show() {
    byId('close-room').disabled = this.#corners.length < 3;
    byId('undo-corner').disabled = this.#corners.length === 0;
    if (document.activeElement?.matches('button:disabled')) {
      byId('board').focus();
    }
    this.redraw();
  }
}
