/** Binds every field with `data-at`, a JSON Pointer, to the request. */

import { KINDS } from './kinds.js';
import { unitName } from './format.js';

/** @typedef {import('./store.js').Store} Store */

/**
 * Listens to the form, and shows the request in it whenever rows come or go.
 * @param {HTMLFormElement} form
 * @param {Store} store
 */
export function bindFields(form, store) {
  form.addEventListener('submit', (event) => event.preventDefault());
  form.addEventListener('input', (event) => take(/** @type {any} */ (event.target), store));
  store.listen(({ structure }) => structure && showFields(document, store));
}

function take(field, store) {
  const pointer = field.dataset.at;
  if (pointer === undefined || field.dataset.kind === undefined) {
    return;
  }
  if (field.value.trim() === '') {
    store.set(pointer, undefined);
    return;
  }
  try {
    store.set(pointer, KINDS[field.dataset.kind].read(field.value, store.units));
  } catch (error) {
    store.refuse(pointer, field.value, error.message);
  }
}

/**
 * Writes the request into the fields below a node, and the units beside them.
 * @param {ParentNode} node
 * @param {Store} store
 */
export function showFields(node, store) {
  for (const field of /** @type {NodeListOf<any>} */ (node.querySelectorAll('[data-at][data-kind]'))) {
    const typed = store.unreadable.get(field.dataset.at)?.text;
    show(field, typed ?? KINDS[field.dataset.kind].write(store.at(field.dataset.at), store.units));
  }
  for (const unit of /** @type {NodeListOf<HTMLElement>} */ (node.querySelectorAll('[data-unit]'))) {
    unit.textContent = unitName(store.units, unit.dataset.unit ?? '');
  }
}

/** A choice shows its default as not told, and a word that it does not know as one more. */
function show(field, written) {
  const text = written === field.dataset.default ? '' : written;
  if (field.value !== text) {
    field.value = text;
  }
  if (field.value !== text && field.matches('select')) {
    field.append(new Option(text, text, true, true));
  }
}
