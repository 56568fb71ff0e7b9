/** The depth map as a picture; its own description is what is read aloud. */

import { byId } from './dom.js';

let url = '';

/** @param {string} text an SVG of the service */
export function showMap(text) {
  const image = byId('map-image');
  const description = new DOMParser().parseFromString(text, 'image/svg+xml').querySelector('desc');
  URL.revokeObjectURL(url);
  url = URL.createObjectURL(new Blob([text], { type: 'image/svg+xml' }));
  image.src = url;
  image.alt = description?.textContent ?? 'Depth map';
  byId('map').hidden = false;
}

/** Lets a map on a small screen be seen small and whole, or large. */
export function bindMapSize() {
  byId('map-size').addEventListener('click', (event) => {
    const large = byId('map-frame').classList.toggle('large');
    event.target.setAttribute('aria-pressed', String(large));
  });
}
