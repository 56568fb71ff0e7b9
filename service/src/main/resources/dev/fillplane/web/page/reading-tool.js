/** Asks what the rod says at a place of the board. */

import { convertField, readNumber } from '../elements/numbers.js';
import { convertPlace } from './convert.js';
import { byId } from './dom.js';
import { unitName } from './format.js';
import { addReading } from './survey.js';

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
    this.#name();
    byId('new-reading').focus();
  }

  /** @param {'metric' | 'us'} units */
  convertTo(units) {
    this.#place = convertPlace(this.#place, units);
    convertField(byId('new-reading'), 'height', units);
    this.#name();
  }

  #name() {
    const place = this.#place.map((value) => Number(value.toFixed(3)));
    byId('reading-place').textContent = `Reading at ${place.join(', ')} ${unitName(this.store.units, 'plan')}`;
  }

  stop() {
    byId('reading-at').hidden = true;
  }

  #take() {
    const field = byId('new-reading');
    try {
      const reading = readNumber(field.value, this.store.units);
      const [x, y] = this.#place;
      setWrong(field, false);
      field.value = '';
      this.stop();
      addReading(this.store, { x, y, reading });
      this.say(`Reading ${reading} taken.`);
      this.board.focus();
    } catch (error) {
      setWrong(field, true);
      this.say(error.message);
    }
  }
}

function setWrong(field, wrong) {
  for (const [name, value] of [['aria-invalid', 'true'], ['aria-describedby', 'status']]) {
    if (wrong) {
      field.setAttribute(name, value);
    } else {
      field.removeAttribute(name);
    }
  }
}
