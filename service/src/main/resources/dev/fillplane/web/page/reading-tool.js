/** Asks what the rod says at a place of the board. */

import { byId } from './dom.js';
import { unitName } from './format.js';
import { readNumber } from './kinds.js';
import { addReading } from './readings.js';

/** @typedef {import('./store.js').Store} Store */
/** @typedef {import('./geometry.js').Point} Point */

export class ReadingTool {
  hint = 'Point at the place of a reading, then type what the rod says.';
  #place = /** @type {Point} */ ([0, 0]);

  /** @param {Store} store @param {(text: string) => void} say @param {SVGElement} board */
  constructor(store, say, board) {
    this.store = store;
    this.say = say;
    this.board = board;
    byId('add-reading').addEventListener('click', () => this.#take());
    byId('new-reading').addEventListener('keydown', (event) => event.key === 'Enter' && this.#take());
  }

  /** @returns {Point[]} */
  corners() {
    return [];
  }

  /** @param {Point} p */
  act(p) {
    this.#place = p;
    byId('reading-at').hidden = false;
    byId('reading-place').textContent = `Reading at ${p.join(', ')} ${unitName(this.store.units, 'plan')}`;
    byId('new-reading').focus();
  }

  stop() {
    byId('reading-at').hidden = true;
  }

  #take() {
    const field = byId('new-reading');
    try {
      const reading = readNumber(field.value, this.store.units);
      const [x, y] = this.#place;
      field.removeAttribute('aria-invalid');
      field.value = '';
      this.stop();
      addReading(this.store, { x, y, reading });
      this.say(`Reading ${reading} taken.`);
      this.board.focus();
    } catch (error) {
      field.setAttribute('aria-invalid', 'true');
      this.say(error.message);
    }
  }
}
