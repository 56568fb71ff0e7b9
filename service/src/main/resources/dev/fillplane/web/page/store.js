/** The one request that the page is about, and who wants to know when it changes. */

import { convertRequest } from './convert.js';
import { put, valueAt } from './pointer.js';
import { countOf } from './survey.js';

/** @typedef {{ structure: boolean, whole: boolean }} Change whether rows came or went, beside values; whether it is another request */

/** @param {string} units */
export function emptyRequest(units) {
  return { units, rooms: [], survey: { setups: [{ id: 'A', readings: [] }] } };
}

export class Store {
  /** @type {((change: Change) => void)[]} */
  #listeners = [];
  #request = emptyRequest('metric');

  /** What is typed but cannot be read, and why, by pointer. @type {Map<string, { text: string, why: string }>} */
  unreadable = new Map();

  /** What was here before another request took its place, so that no typed floor is lost by a click. @type {any} */
  before = null;

  /** @returns {any} */
  get request() {
    return this.#request;
  }

  /** @returns {'metric' | 'us'} */
  get units() {
    return this.#request.units;
  }

  /** @param {string} pointer */
  at(pointer) {
    return valueAt(this.#request, pointer);
  }

  /** @param {(change: Change) => void} listener */
  listen(listener) {
    this.#listeners.push(listener);
  }

  /** A value was typed. @param {string} pointer @param {unknown} value */
  set(pointer, value) {
    this.unreadable.delete(pointer);
    put(this.#request, pointer, value);
    this.#tell(false);
  }

  /** Something was typed that is no value. @param {string} pointer @param {string} text @param {string} why */
  refuse(pointer, text, why) {
    this.unreadable.set(pointer, { text, why });
    this.#tell(false);
  }

  /** Rows come. @param {(request: any) => void} edit */
  change(edit) {
    edit(this.#request);
    this.#tell(true);
  }

  /** A row goes, and those behind it move up. @param {string} at pointer of the list @param {number} i */
  remove(at, i) {
    this.at(at).splice(i, 1);
    this.unreadable = movedUp(this.unreadable, at, i);
    this.#tell(true);
  }

  /** A part is told anew. @param {string} at pointer of the part @param {unknown} value */
  renew(at, value) {
    put(this.#request, at, value);
    this.unreadable = new Map([...this.unreadable].filter(([pointer]) => !pointer.startsWith(`${at}/`)));
    this.#tell(true);
  }

  /** The same request in other units. @param {'metric' | 'us'} units */
  convertTo(units) {
    this.#request = convertRequest(this.#request, units);
    this.#tell(true);
  }

  /** Another request altogether. @param {any} request */
  replace(request) {
    if (this.#request.rooms.length > 0 || countOf(this.#request.survey) > 0) {
      this.before = this.#request;
    }
    this.#request = structuredClone(request);
    this.unreadable.clear();
    this.#tell(true, true);
  }

  #tell(structure, whole = false) {
    this.#listeners.forEach((listener) => listener({ structure, whole }));
  }
}

/** What is said about rows, after row i of a list went. */
function movedUp(told, at, i) {
  const moved = new Map();
  for (const [pointer, what] of told) {
    const [row, ...rest] = pointer.startsWith(`${at}/`) ? pointer.slice(at.length + 1).split('/') : [];
    if (row === undefined || Number(row) < i) {
      moved.set(pointer, what);
    } else if (Number(row) > i) {
      moved.set([at, Number(row) - 1, ...rest].join('/'), what);
    }
  }
  return moved;
}
