/** Fills the choices that the service knows: materials and coverings. */

import { byId, el } from './dom.js';
import { fixed, quantity, sixteenths, unitName } from './format.js';
import { showFields } from './fields.js';
import { get } from './service.js';

/** @typedef {import('./store.js').Store} Store */

/** @param {Store} store @param {(error: Error) => void} failed */
export function bindCatalogue(store, failed) {
  let units = '';
  store.listen(async () => {
    if (store.units !== units) {
      units = store.units;
      try {
        await fill(store);
      } catch (error) {
        units = '';
        failed(error);
      }
    }
  });
}

async function fill(store) {
  const [materials, coverings] = await Promise.all(
    ['materials', 'coverings'].map((name) => get(`v1/${name}?units=${store.units}`)));
  options('material', 'the usual sheet', materials.items.map((sheet) => [sheet.id, title(store.units, sheet)]));
  options('covering', 'not told', coverings.items.map(({ id, name }) => [id, name]));
  showFields(byId('job'), store);
}

function title(units, sheet) {
  const height = units === 'us' ? sixteenths : (value) => fixed(value, 0);
  const lift = `${height(sheet.minimumLift)} to ${height(sheet.maximumLift)} ${unitName(units, 'height')}`;
  return `${sheet.id} (${quantity(units, 'mass', sheet.bagMass)}, ${lift})`;
}

function options(id, none, list) {
  byId(id).replaceChildren(
    el('option', { value: '' }, none),
    ...list.map(([value, text]) => el('option', { value }, text)));
}
