/** Puts what the service says at the field that it is about. */

import { el } from './dom.js';
import { parts } from './pointer.js';

/** @typedef {import('./service.js').Finding} Finding */

/** Takes all notes off the form. @param {HTMLFormElement} form */
export function clearFindings(form) {
  form.querySelectorAll('.finding').forEach((note) => note.remove());
  form.querySelectorAll('[aria-describedby*="finding-"]').forEach((field) => {
    field.removeAttribute('aria-invalid');
    describe(field, others(field));
  });
}

/** What describes a field beside findings, such as a hint. @returns {string[]} */
function others(field) {
  return (field.getAttribute('aria-describedby') ?? '').split(' ').filter((id) => id && !id.startsWith('finding-'));
}

function describe(field, ids) {
  if (ids.length > 0) {
    field.setAttribute('aria-describedby', ids.join(' '));
  } else {
    field.removeAttribute('aria-describedby');
  }
}

/**
 * Puts each finding beside its field, or at the nearest part of the form.
 * @param {HTMLFormElement} form
 * @param {Finding[]} findings
 * @param {'error' | 'warning'} severity
 */
export function placeFindings(form, findings, severity) {
  findings.forEach((finding, i) => {
    const place = placeOf(form, finding.pointer);
    if (place) {
      note(place, finding, severity, `${severity}-${i}`);
    }
  });
}

/**
 * The field or the part of the form that a pointer is about: the longest pointer that leads to it.
 * @param {HTMLFormElement} form
 * @param {string} pointer
 * @returns {any}
 */
export function placeOf(form, pointer) {
  for (let path = parts(pointer); path.length > 0; path = path.slice(0, -1)) {
    const place = form.querySelector(`[data-at="${CSS.escape(`/${path.join('/')}`)}"]`);
    if (place) {
      return place;
    }
  }
  return null;
}

/** Goes to the place of a finding. @param {any} place */
export function goTo(place) {
  for (let around = place.closest('details'); around; around = around.parentElement?.closest('details')) {
    around.open = true;
  }
  const field = place.matches('input, select, textarea') ? place : place.querySelector('input, select, textarea, button');
  (field ?? place).focus();
  place.scrollIntoView({ block: 'center' });
}

function note(place, finding, severity, id) {
  const text = el('p', { class: `finding ${severity}`, id: `finding-${id}` }, words(severity), finding.detail);
  if (!place.matches('input, select, textarea')) {
    (place.querySelector('.notes') ?? place).append(text);
    return;
  }
  if (severity === 'error') {
    place.setAttribute('aria-invalid', 'true');
    openAround(place);
  }
  describe(place, [...(place.getAttribute('aria-describedby') ?? '').split(' ').filter(Boolean), text.id]);
  // Behind the label: what stands inside of it is read as the name of the field.
  (place.closest('label') ?? place).after(text);
}

function openAround(place) {
  const around = place.closest('details');
  if (around) {
    around.open = true;
  }
}

function words(severity) {
  return el('strong', {}, severity === 'error' ? 'Mend this: ' : 'Note: ');
}

/**
 * A list of findings with a way to each place.
 * @param {HTMLFormElement} form
 * @param {Finding[]} findings
 */
export function findingList(form, findings) {
  return el('ul', { class: 'findings' }, ...findings.map((finding) => item(form, finding)));
}

function item(form, finding) {
  const place = placeOf(form, finding.pointer);
  const go =
    place && el('button', { type: 'button', class: 'link', onclick: () => goTo(place) }, 'Go to it');
  return el('li', {}, `${finding.detail} `, go);
}
