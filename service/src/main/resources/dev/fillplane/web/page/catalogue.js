/** Fills the choices that the service knows: materials and coverings. */

import { byId, el } from './dom.js';
import { quantity } from './format.js';
import { showFields } from './fields.js';
import { get } from './service.js';

/** @typedef {import('./store.js').Store} Store */

/** @param {Store} store @param {(error: Error) => void} failed */
export function bindCatalogue(store, failed) {
  let units = '';
  let sheets = [];
  store.listen(async () => {
    if (store.units !== units) {
      units = store.units;
      try {
        sheets = await fill(store);
      } catch (error) {
        units = '';
        failed(error);
      }
    }
    hint(store, sheets);
  });
}

async function fill(store) {
  const [materials, coverings] = await Promise.all(
    ['materials', 'coverings'].map((name) => get(`v1/${name}?units=${store.units}`)));
  options('material', 'the usual sheet', materials.items.map(({ id }) => [id, id]));
  options('covering', 'not told', coverings.items.map(({ id, name }) => [id, name]));
  showFields(byId('job'), store);
  return materials.items;
}

/** What the chosen sheet is good for. */
function hint(store, sheets) {
  const { units } = store;
  const sheet = sheets.find(({ id }) => id === store.at('/material/id'));
  byId('material-hint').textContent = sheet
    ? `Bags of ${quantity(units, 'mass', sheet.bagMass)}; layers of ${quantity(units, 'height', sheet.minimumLift)} to ${quantity(units, 'height', sheet.maximumLift)}.`
    : '';
}

function options(id, none, list) {
  byId(id).replaceChildren(
    el('option', { value: '' }, none),
    ...list.map(([value, text]) => el('option', { value }, text)));
}
