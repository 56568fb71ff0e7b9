/**
 * Where the focus goes when rows of the form come or go: who types or listens stays where he was,
 * and is not sent back to the top of the page with the row that is no more.
 */

/**
 * Goes to the first field of a row, or else to the button that adds one to its list.
 * @param {string} at pointer of the list
 * @param {number} i
 */
function goToRow(at, i) {
  const field = first(`[data-at^="${at}/${i}/"][data-kind]`);
  const closed = field?.closest('details:not([open])');
  (closed?.querySelector('summary') ?? field ?? first(`[data-add="${at}"]`))?.focus();
}

/**
 * Adds a row and goes to it.
 * @param {import('./store.js').Store} store
 * @param {string} at pointer of the list, which is there
 * @param {any} row
 */
export function addRow(store, at, row) {
  store.change(() => store.at(at).push(row));
  goToRow(at, store.at(at).length - 1);
}

/**
 * Removes a row and goes to the one behind it.
 * @param {import('./store.js').Store} store
 * @param {string} at
 * @param {number} i
 */
export function removeRow(store, at, i) {
  store.remove(at, i);
  goToRow(at, i);
}

/** @param {string} selector @returns {HTMLElement | null} */
function first(selector) {
  return document.querySelector(selector);
}
