/** Puts the page together. */

import { byId, el } from './dom.js';
import { Store, emptyRequest } from './store.js';
import { bindFields } from './fields.js';
import { addRoom, showRooms } from './rooms.js';
import { showReadings } from './readings.js';
import { Drawing } from './drawing.js';
import { Planning, hasFindings } from './planning.js';
import { bindImport } from './imports.js';
import { bindCatalogue } from './catalogue.js';
import { bindCompare } from './compare.js';
import { bindFiles } from './files.js';
import { Picture } from './picture.js';
import { clearFindings, findingList, goTo, placeFindings, placeOf } from './findings.js';
import { numbersPart, sentence, verdictPart } from './plan-view.js';
import { orderPart } from './order-view.js';
import { changesPart, safetyPart, waysPart } from './advice-view.js';
import { get, useKey } from './service.js';

const store = new Store();
const form = byId('job');
const pictures = { map: new Picture('map'), timeline: new Picture('timeline') };

/** Tells those who look and those who listen. @param {string} text */
function say(text) {
  byId('status').textContent = text;
}

/** What the page shows in each state of a plan. */
const views = {
  missing(text) {
    clearFindings(form);
    placeFindings(form, [...store.unreadable].map(([pointer, { why }]) => ({ code: '', pointer, detail: why })), 'error');
    state('empty', text);
  },
  waiting() {
    clearFindings(form);
    byId('results').setAttribute('aria-busy', 'true');
  },
  plan(plan) {
    clearFindings(form);
    byId('verdict').replaceChildren(verdictPart(plan));
    byId('numbers').replaceChildren(numbersPart(plan));
    byId('changes').replaceChildren(changesPart(plan));
    byId('ways').replaceChildren(waysPart(plan));
    byId('order').replaceChildren(orderPart(plan));
    byId('safety').replaceChildren(safetyPart(plan));
    placeFindings(form, plan.warnings, 'warning');
    byId('warnings').replaceChildren(findingList(form, plan.warnings));
    state('planned', sentence(plan));
  },
  picture: (name, svg) => pictures[name].show(svg),
  pictureless(name, error) {
    pictures[name].hide();
    say(`The plan stands, but its ${name} is missing: ${error.message}`);
  },
  failed(error) {
    const findings = hasFindings(error) ? error.findings : [];
    clearFindings(form);
    placeFindings(form, findings, 'error');
    byId('trouble').replaceChildren(
      el('p', {}, findings.length > 0 ? 'There is no plan yet. Mend what is marked:' : error.message),
      findingList(form, findings));
    byId('key-box').hidden = error.status !== 401 && error.status !== 403;
    state('failed', findings.length > 0 ? `No plan: ${findings[0].detail}` : error.message);
  },
};

function state(name, text) {
  const results = byId('results');
  const focused = document.activeElement;
  results.dataset.state = name;
  results.removeAttribute('aria-busy');
  if (results.contains(focused) && !focused?.checkVisibility()) {
    results.focus();
  }
  byId('short').textContent = name === 'planned' ? text : 'No plan yet';
  say(text);
}

function showUnits() {
  for (const choice of /** @type {any[]} */ ([...document.getElementsByName('units')])) {
    choice.checked = choice.value === store.units;
  }
}

async function openSample() {
  try {
    store.replace(await get(`page/sample-${store.units}.json`));
  } catch (error) {
    views.failed(error);
  }
}

/** Everything that the service is asked for, lists of materials as well. */
function askAgain() {
  store.change(() => {});
}

bindFields(form, store);
showRooms(byId('rooms'), store);
showReadings(byId('readings'), store);
bindImport(store, say);
bindCatalogue(store, views.failed);
bindCompare(store);
bindFiles(store, say);
store.listen(({ structure }) => structure && showUnits());
store.listen(() => (byId('back').hidden = store.before === null));
new Drawing(store, say);
new Planning(store, views);

byId('sample').addEventListener('click', openSample);
byId('empty').addEventListener('click', () => store.replace(emptyRequest(store.units)));
byId('back').addEventListener('click', () => store.replace(store.before));
byId('type-room').addEventListener('click', () => {
  addRoom(store);
  goTo(placeOf(form, `/rooms/${store.request.rooms.length - 1}/outline/coordinates`));
});
byId('units').addEventListener('change', (event) => store.convertTo(event.target.value));
byId('service-key').addEventListener('change', (event) => {
  useKey(event.target.value);
  askAgain();
});
byId('again').addEventListener('click', askAgain);
window.addEventListener('online', () => byId('results').dataset.state === 'failed' && askAgain());
store.replace(emptyRequest('metric'));
