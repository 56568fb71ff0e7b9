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

/** The dialog for the key: it takes the focus, Escape leaves it, and the focus goes back to where it was. */
class KeyDialog {
  /** What last had the focus outside. @type {any} */
  #opener = null;
  #open = false;

  /** @param {HTMLElement} reference */
  constructor(reference) {
    this.reference = reference;
    reference.addEventListener('focusin', ({ target }) => {
      this.#opener = /** @type {any} */ (target).closest('.dialog-ux') ? this.#opener : target;
    });
    reference.addEventListener('keydown', (event) => event.key === 'Escape' && this.#find('.close-modal')?.click());
  }

  repair() {
    const dialog = this.#find('.modal-ux');
    if (dialog && !dialog.hasAttribute('role')) {
      this.#open = true;
      dialog.setAttribute('role', 'dialog');
      dialog.setAttribute('aria-label', 'Key of the service');
      this.#find('.close-modal').setAttribute('aria-label', 'Close');
      dialog.querySelector('input, button').focus();
    } else if (!dialog && this.#open) {
      this.#open = false;
      this.#opener?.focus();
    }
  }

  /** @returns {any} */
  #find(selector) {
    return this.reference.querySelector(selector);
  }
}

/** Keeps the reference below a node in repair. @param {HTMLElement} reference */
export function keepInRepair(reference) {
  const dialog = new KeyDialog(reference);
  const repair = () => {
    dialog.repair();
    reference.querySelectorAll(FIELDS).forEach(nameField);
    reference.querySelectorAll(FOLDS).forEach(nameFold);
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

function letKeysScroll(box) {
  if (!box.hasAttribute('tabindex')) {
    box.tabIndex = 0;
  }
}
