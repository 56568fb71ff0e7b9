/** Reads a pasted table of readings through the service. */

import { el, byId } from './dom.js';
import { postTable, Refused } from './service.js';

/** @typedef {import('./store.js').Store} Store */

/** @param {Store} store @param {(text: string) => void} say */
export function bindImport(store, say) {
  byId('import').addEventListener('click', () => run(store, say));
  byId('import-file').addEventListener('change', async (event) => {
    const [file] = event.target.files;
    if (file) {
      byId('import-text').value = await file.text();
      event.target.value = '';
      run(store, say);
    }
  });
}

async function run(store, say) {
  const wrong = byId('import-wrong');
  wrong.replaceChildren();
  byId('import-text').removeAttribute('aria-invalid');
  try {
    const answer = await postTable(`v1/survey-imports?units=${store.units}`, byId('import-text').value);
    const { survey } = await answer.json();
    const { setups, elevations, table, benchmarks, ...kept } = store.request.survey;
    store.renew('/survey', { ...survey, ...kept });
    byId('import-text').value = '';
    byId('import-box').open = false;
    byId('import-box').querySelector('summary').focus();
    say('The table was read.');
  } catch (error) {
    byId('import-text').setAttribute('aria-invalid', 'true');
    wrong.append(...sentences(error).map((text) => el('p', { class: 'finding error' }, text)));
  }
}

function sentences(error) {
  return error instanceof Refused && error.findings.length > 0
    ? error.findings.slice(0, 8).map((finding) => `${place(finding.pointer)}${finding.detail}`)
    : [error.message];
}

/** `#/lines/7/reading` is line 7, reading. */
function place(pointer) {
  const [, line, column] = pointer.replace(/^#\//, '').split('/');
  return line ? `Line ${line}${column ? `, ${column}` : ''}: ` : '';
}
