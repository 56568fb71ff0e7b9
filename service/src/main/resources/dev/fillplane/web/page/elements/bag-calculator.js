/**
 * <fillplane-bags>: how many bags an area takes, for the page of a supplier. See docs/elements.md.
 *
 * Attributes: service, key, units, material, absorbency, area, from, to, bag-mass, water-per-bag,
 * yield-per-bag, primer-coverage. Event: `bags`, with the answer of the service as its detail.
 */

import { convertField } from './numbers.js';
import { countBags, materials } from './bag-service.js';
import { formParts, resultParts, showUnits, sheet } from './bag-parts.js';
import { askOf } from './bag-request.js';

const REST_MILLIS = 400;
const HOME = new URL('..', import.meta.url).href;
/** What is typed, by what it measures. */
const FIELDS = { area: 'area', from: 'height', to: 'height' };

class BagCalculator extends HTMLElement {
  static observedAttributes = ['units', 'material', 'service', 'key', 'absorbency'];

  #timer = 0;
  #running = new AbortController();

  connectedCallback() {
    if (this.shadowRoot === null) {
      const root = this.attachShadow({ mode: 'open', delegatesFocus: true });
      root.adoptedStyleSheets = [sheet()];
      root.append(...formParts());
      root.addEventListener('input', () => this.#rest());
      root.querySelector('form').addEventListener('submit', (event) => event.preventDefault());
      this.#fill([...Object.keys(FIELDS), 'absorbency']);
    }
    this.#begin();
  }

  disconnectedCallback() {
    clearTimeout(this.#timer);
    this.#running.abort();
  }

  attributeChangedCallback(name, before, now) {
    const root = this.shadowRoot;
    if (root === null || before === now) {
      return;
    }
    if (name === 'absorbency') {
      this.#fill([name]);
    } else if (name === 'units' && (before === 'us') !== (now === 'us')) {
      Object.entries(FIELDS).forEach(([id, dimension]) => convertField(root.getElementById(id), dimension, this.units));
    }
    this.#begin();
  }

  /** Where the service is: the attribute, or where this script came from. */
  get service() {
    return { at: this.getAttribute('service') ?? HOME, key: this.getAttribute('key') };
  }

  get units() {
    return this.getAttribute('units') === 'us' ? 'us' : 'metric';
  }

  #fill(names) {
    names.forEach((name) => (this.shadowRoot.getElementById(name).value = this.getAttribute(name) ?? ''));
  }

  async #begin() {
    const root = this.shadowRoot;
    showUnits(root, this.units);
    const told = this.hasAttribute('material') || this.hasAttribute('bag-mass');
    root.getElementById('materials').hidden = told;
    if (!told) {
      await this.#offer();
    }
    this.#rest();
  }

  async #offer() {
    try {
      const list = await materials(this.service, this.units);
      const choice = this.shadowRoot.getElementById('material');
      const chosen = choice.value;
      choice.replaceChildren(...list.map(({ id }) => new Option(id, id, false, id === chosen)));
    } catch (error) {
      this.#say(error.message, true);
    }
  }

  #rest() {
    clearTimeout(this.#timer);
    this.#running.abort();
    this.#timer = setTimeout(() => this.#count(), REST_MILLIS);
  }

  async #count() {
    this.#running = new AbortController();
    this.shadowRoot.querySelectorAll('[aria-invalid]').forEach((field) => {
      field.removeAttribute('aria-invalid');
      field.removeAttribute('aria-describedby');
    });
    try {
      const ask = askOf(this);
      if (ask === null) {
        this.#say('Tell the area and how thick it is filled.', false);
        return;
      }
      const answer = await countBags(this.service, ask, this.#running.signal);
      this.shadowRoot.getElementById('result').replaceChildren(...resultParts(answer));
      this.dispatchEvent(new CustomEvent('bags', { detail: answer, bubbles: true, composed: true }));
    } catch (error) {
      if (error.name !== 'AbortError') {
        this.#wrong(error);
      }
    }
  }

  #wrong(error) {
    if (error.field) {
      const field = this.shadowRoot.getElementById(error.field);
      field.setAttribute('aria-invalid', 'true');
      field.setAttribute('aria-describedby', 'result');
    }
    this.#say(error.message, true);
  }

  #say(text, wrong) {
    const line = document.createElement('p');
    line.textContent = text;
    line.className = wrong ? 'wrong' : '';
    this.shadowRoot.getElementById('result').replaceChildren(line);
  }
}

customElements.define('fillplane-bags', BagCalculator);
