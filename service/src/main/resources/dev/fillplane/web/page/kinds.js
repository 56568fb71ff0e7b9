/** How each kind of field is read and written. Reading throws a sentence where it cannot. */

import { readNumber } from '../elements/numbers.js';

/** @typedef {{ read: (text: string, units: string) => any, write: (value: any, units: string) => string }} Kind */

/** Six digits are enough for a hand-held number. @param {number} value */
export function writeNumber(value) {
  return value === undefined ? '' : String(Number(value.toPrecision(6)));
}

function readPosition(text, units) {
  const words = text.trim().split(/\s*[;]\s*|\s+/);
  if (words.length !== 2) {
    throw new Error('Type two numbers, x and y, with a space between, such as 2.5 0.');
  }
  return words.map((word) => readNumber(word, units));
}

/** Rings of corners, one corner a line, a blank line before an island; the first corner closes. */
function readCorners(text, units) {
  const rings = text
    .trim()
    .split(/\n\s*\n/)
    .map((ring) => ring.split('\n').filter((line) => line.trim()).map((line) => readPosition(line, units)));
  if (rings.some((ring) => ring.length < 3)) {
    throw new Error('Type at least three corners, one a line: x and y.');
  }
  return rings.map((ring) => (same(ring[0], ring[ring.length - 1]) ? ring : [...ring, ring[0]]));
}

function same(a, b) {
  return a[0] === b[0] && a[1] === b[1];
}

function writePosition(position) {
  return position ? position.map(writeNumber).join(' ') : '';
}

function readInteger(text, units) {
  const value = readNumber(text, units);
  if (!Number.isInteger(value)) {
    throw new Error('Type a whole number.');
  }
  return value;
}

/** @type {Record<string, Kind>} */
export const KINDS = {
  number: { read: readNumber, write: writeNumber },
  integer: { read: readInteger, write: writeNumber },
  percent: {
    read: (text, units) => readNumber(text, units) / 100,
    write: (value) => (value === undefined ? '' : writeNumber(value * 100)),
  },
  word: { read: (text) => text, write: (value) => value ?? '' },
  yesno: {
    read: (text) => text === 'yes',
    write: (value) => (value === undefined ? '' : value ? 'yes' : 'no'),
  },
  position: { read: readPosition, write: writePosition },
  corners: {
    read: readCorners,
    write: (rings) =>
      (rings ?? []).map((ring) => ring.slice(0, -1).map(writePosition).join('\n')).join('\n\n'),
  },
};
