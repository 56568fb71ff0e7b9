/** The one request that the page is about, and who wants to know when it changes. */

import { put, valueAt } from './pointer.js';

/** @typedef {{ structure: boolean }} Change whether rows came or went, beside values */

/** @param {string} units */
export function emptyRequest(units) {
  return { units, rooms: [], survey: { setups: [{ id: 'A', readings: [] }] } };
}

export class Store {
  /** @type {((change: Change) => void)[]} */
  #listeners = [];
  #request = emptyRequest('metric');

  /** What is typed but cannot be read, by pointer. @type {Map<string, string>} */
  unreadable = new Map();

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

  /** Something was typed that is no value. @param {string} pointer @param {string} why */
  refuse(pointer, why) {
    this.unreadable.set(pointer, why);
    this.#tell(false);
  }

  /** Rows come or go. @param {(request: any) => void} edit */
  change(edit) {
    edit(this.#request);
    this.unreadable.clear();
    this.#tell(true);
  }

  /** Another request altogether. @param {any} request */
  replace(request) {
    this.#request = structuredClone(request);
    this.unreadable.clear();
    this.#tell(true);
  }

  #tell(structure) {
    this.#listeners.forEach((listener) => listener({ structure }));
  }
}
