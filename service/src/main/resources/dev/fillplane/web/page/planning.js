/** Asks for the plan and its pictures whenever the request rests, and drops what is out of date. */

import { post, Refused } from './service.js';
import { countOf, withoutBegun } from './survey.js';

/** @typedef {import('./store.js').Store} Store */

const REST_MILLIS = 500;
/** Where each picture is made. */
const PICTURES = {
  map: 'v1/depth-maps?layers=depth,contours,readings,ribbons,guides,ground,passes',
  timeline: 'v1/timelines',
};

/**
 * @typedef {object} Views
 * @property {(text: string) => void} missing what must still be told
 * @property {() => void} waiting
 * @property {(plan: any, request: any) => void} plan
 * @property {(name: string, svg: string) => void} picture the map or the timeline
 * @property {(name: string, error: Error) => void} pictureless the plan stands, a picture could not be had
 * @property {(error: Error) => void} failed
 */

export class Planning {
  #timer = 0;
  #running = new AbortController();

  /** @param {Store} store @param {Views} views */
  constructor(store, views) {
    this.store = store;
    this.views = views;
    store.listen(() => this.rest());
  }

  /** Waits until nobody types. */
  rest() {
    this.#running.abort();
    clearTimeout(this.#timer);
    const missing = missingIn(this.store);
    if (missing) {
      this.views.missing(missing);
      return;
    }
    this.views.waiting();
    this.#timer = setTimeout(() => this.run(), REST_MILLIS);
  }

  async run() {
    this.#running = new AbortController();
    const { signal } = this.#running;
    const request = structuredClone(withoutBegun(this.store.request));
    try {
      const plan = await (await post('v1/plans', request, signal)).json();
      this.views.plan(plan, request);
      await this.#pictures(request, signal);
    } catch (error) {
      if (error.name !== 'AbortError') {
        this.views.failed(error);
      }
    }
  }

  async #pictures(request, signal) {
    for (const [name, path] of Object.entries(PICTURES)) {
      try {
        this.views.picture(name, await (await post(path, request, signal)).text());
      } catch (error) {
        if (error.name === 'AbortError') {
          return;
        }
        this.views.pictureless(name, error);
      }
    }
  }
}

/** What must be told before a plan makes sense, or nothing. @param {Store} store */
function missingIn({ request, unreadable }) {
  if (unreadable.size > 0) {
    return 'Something typed cannot be read; it is marked in the form.';
  }
  if (!request.rooms.some((room) => room.outline?.coordinates?.length > 0)) {
    return 'Draw a room, or type its corners. Or look at the sample floor first.';
  }
  if (countOf(request.survey) < 3) {
    return 'Take at least three readings: point at their places, type rows, or paste a table.';
  }
  return undefined;
}

/** Whether the service refused it and says where. @param {Error} error */
export function hasFindings(error) {
  return error instanceof Refused && error.findings.length > 0;
}
