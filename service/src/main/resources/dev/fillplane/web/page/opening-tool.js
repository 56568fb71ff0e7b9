/** Puts an opening into the wall that is nearest. */

import { openingNear } from './geometry.js';
import { addOpening } from './rooms.js';

/** @typedef {import('./store.js').Store} Store */
/** @typedef {import('./geometry.js').Point} Point */

const WIDTH = { metric: 0.9, us: 3 };
const HINTS = {
  exit: 'Point at the wall where people and bags leave the floor.',
  doorway: 'Point at the wall that the doorway is in.',
};

export class OpeningTool {
  /** @param {'exit' | 'doorway'} kind @param {Store} store @param {(text: string) => void} say */
  constructor(kind, store, say) {
    this.kind = kind;
    this.hint = HINTS[kind];
    this.store = store;
    this.say = say;
  }

  /** @returns {Point[]} */
  corners() {
    return [];
  }

  /** @param {Point} p */
  act(p) {
    const found = openingNear(this.store.request.rooms, p, WIDTH[this.store.units]);
    if (!found) {
      this.say('Draw a room first; an opening is in a wall.');
      return;
    }
    const { room, from, to, into } = found;
    const leads = this.kind === 'doorway' && into !== undefined ? { into } : {};
    addOpening(this.store, room, { kind: this.kind, from, to, ...leads });
    this.say(`There is a ${this.kind === 'exit' ? 'way out' : 'doorway'} in room ${room + 1}.`);
  }

  stop() {}

  convertTo() {}
}
