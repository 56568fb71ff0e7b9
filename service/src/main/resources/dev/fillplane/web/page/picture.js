/** Pictures of the service, each in a frame that scrolls; what they describe is read aloud. */

import { byId } from './dom.js';

export class Picture {
  #url = '';

  /** @param {string} id of its section; its image, frame and button are named after it */
  constructor(id) {
    this.id = id;
    byId(`${id}-size`).addEventListener('click', (event) => {
      const large = byId(`${id}-frame`).classList.toggle('large');
      event.target.setAttribute('aria-pressed', String(large));
    });
  }

  /** Takes it away, so that no picture of another plan stays. */
  hide() {
    byId(this.id).hidden = true;
  }

  /** Shows an SVG as an image: nothing in it runs or changes the page. @param {string} text */
  show(text) {
    const image = byId(`${this.id}-image`);
    const description = new DOMParser().parseFromString(text, 'image/svg+xml').querySelector('desc');
    URL.revokeObjectURL(this.#url);
    this.#url = URL.createObjectURL(new Blob([text], { type: 'image/svg+xml' }));
    image.src = this.#url;
    image.alt = description?.textContent ?? '';
    byId(this.id).hidden = false;
  }
}
