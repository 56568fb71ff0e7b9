/*
 * What the library leaves out for those who listen or type: names of its fields, a way by keys into
 * what scrolls. It renders again and again, so that each change of the page is gone through.
 */

const FIELDS = 'input:not([type=hidden]), select, textarea';
const FOLDS = '.model-box-control:not([aria-label])';
const SCROLLS = 'pre, .table-container, .model-box';

/** What a field is called by where it stands; the first that fits. */
const NAMES = [
  ['tr[data-param-name]', (place) => place.dataset.paramName],
  ['.examples-select', () => 'Example'],
  ['.auth-container', () => 'Key'],
  ['.response-controls, .content-type-wrapper', () => 'Media type'],
  ['.body-param', () => 'Body'],
];

/** Keeps the reference below a node in repair. @param {HTMLElement} reference */
export function keepInRepair(reference) {
  const repair = () => {
    reference.querySelectorAll(FIELDS).forEach(nameField);
    reference.querySelectorAll(FOLDS).forEach(nameFold);
    reference.querySelectorAll('.close-modal').forEach((button) => button.setAttribute('aria-label', 'Close'));
    reference.querySelectorAll('.modal-ux').forEach(nameDialog);
    reference.querySelectorAll(SCROLLS).forEach(letKeysScroll);
  };
  new MutationObserver(repair).observe(reference, { childList: true, subtree: true });
  repair();
}

function nameField(field) {
  if (field.hasAttribute('aria-label') || field.labels?.length > 0) {
    return;
  }
  const [place, name] = NAMES.map(([selector, name]) => [field.closest(selector), name]).find(([place]) => place) ?? [];
  const operation = field.closest('.opblock')?.querySelector('[data-path]')?.dataset.path;
  field.setAttribute('aria-label', [place ? name(place) : field.title || 'Choice', operation].filter(Boolean).join(' of '));
}

/** A button that shows the parts of a property. */
function nameFold(button) {
  if (button.textContent.trim() === '') {
    const property = button.closest('.property-row')?.firstElementChild?.textContent;
    button.setAttribute('aria-label', `Parts${property ? ` of ${property}` : ''}`);
  }
}

function nameDialog(dialog) {
  if (!dialog.hasAttribute('role')) {
    dialog.setAttribute('role', 'dialog');
    dialog.setAttribute('aria-label', 'Key of the service');
    dialog.querySelector('input, button')?.focus();
  }
}

function letKeysScroll(box) {
  if (!box.hasAttribute('tabindex')) {
    box.tabIndex = 0;
  }
}
