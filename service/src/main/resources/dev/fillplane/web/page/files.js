/** Saves and opens the request, and saves what the service makes of it. */

import { byId, el } from './dom.js';
import { post } from './service.js';
import { withoutBegun } from './survey.js';

/** @typedef {import('./store.js').Store} Store */

const MADE = {
  'save-map': ['v1/depth-maps', 'depth-map.svg'],
  'save-batches': ['v1/batch-lists', 'batches.csv'],
  'save-sheet': ['v1/pour-sheets', 'pour-sheet.pdf'],
  'save-page': ['v1/pour-pages', 'pour-sheet.html'],
  'save-timeline': ['v1/timelines', 'timeline.svg'],
};

/** @param {Store} store @param {(text: string) => void} say */
export function bindFiles(store, say) {
  byId('save-request').addEventListener('click', () =>
    save(new Blob([JSON.stringify(store.request, null, 2)], { type: 'application/json' }), 'pour-request.json'));
  byId('open-request').addEventListener('change', async (event) => {
    const [file] = event.target.files;
    if (file) {
      say(open(store, await file.text()));
      event.target.value = '';
    }
  });
  for (const [id, [path, name]] of Object.entries(MADE)) {
    byId(id).addEventListener('click', () => saveMade(store, path, name, say));
  }
}

function open(store, text) {
  try {
    const request = JSON.parse(text);
    if (!Array.isArray(request.rooms) || typeof request.survey !== 'object') {
      return 'This file is no plan request: it needs rooms and a survey.';
    }
    store.replace({ ...request, units: request.units === 'us' ? 'us' : 'metric' });
    return 'The request was opened.';
  } catch {
    return 'This file is not JSON.';
  }
}

async function saveMade(store, path, name, say) {
  try {
    save(await (await post(path, withoutBegun(store.request))).blob(), name);
    say(`Saved ${name}.`);
  } catch (error) {
    say(error.message);
  }
}

function save(blob, name) {
  const url = URL.createObjectURL(blob);
  el('a', { href: url, download: name }).click();
  setTimeout(() => URL.revokeObjectURL(url), 10_000);
}
