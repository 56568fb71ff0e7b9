/** Between plan coordinates (y upwards) and the pixels of the board (y downwards). */

import { boxOf, tidy } from './geometry.js';

/** @typedef {import('./geometry.js').Point} Point */

const MARGIN = 28;
const STEP = { metric: 0.1, us: 0.25 };
const LINE = { metric: 1, us: 5 };
/** Lines stand so far apart, in pixels, that the numbers beside them do not collide. */
const APART = 30;
const SPREADS = [1, 2, 5, 10, 20, 50, 100, 200, 500];
const EMPTY = { metric: [0, 0, 8, 5.5], us: [0, 0, 26, 18] };

export class ViewBox {
  /**
   * @param {string} units
   * @param {Point[]} points what must be seen
   * @param {number} width of the board in pixels
   * @param {number} height
   * @param {number} wider how much more than that is seen
   */
  constructor(units, points, width, height, wider) {
    const [left, bottom, right, top] = boxOf([...points, ...(points.length > 1 ? [] : corners(EMPTY[units]))]);
    this.step = STEP[units];
    this.line = LINE[units];
    this.width = width;
    this.height = height;
    this.scale =
      Math.min((width - 2 * MARGIN) / Math.max(right - left, 0.1), (height - 2 * MARGIN) / Math.max(top - bottom, 0.1)) / wider;
    this.middle = [(left + right) / 2, (bottom + top) / 2];
  }

  /** @param {Point} p @returns {Point} */
  toPixels([x, y]) {
    return [
      Math.round((this.width / 2 + (x - this.middle[0]) * this.scale) * 10) / 10,
      Math.round((this.height / 2 - (y - this.middle[1]) * this.scale) * 10) / 10,
    ];
  }

  /** @param {Point} p @returns {Point} */
  toPlan([px, py]) {
    return [
      this.middle[0] + (px - this.width / 2) / this.scale,
      this.middle[1] - (py - this.height / 2) / this.scale,
    ];
  }

  /** The nearest corner within some pixels, or else the nearest step. @param {Point} p @param {Point[]} known @returns {Point} */
  snap(p, known) {
    const reach = 10 / this.scale;
    const near = known.find((corner) => Math.hypot(corner[0] - p[0], corner[1] - p[1]) <= reach);
    return near ?? /** @type {Point} */ (p.map((value) => tidy(Math.round(value / this.step) * this.step)));
  }

  /** Whole lines of the background along x (0) or y (1). @param {0 | 1} axis */
  lines(axis) {
    const [a, b] = [this.toPlan([0, this.height])[axis], this.toPlan([this.width, 0])[axis]];
    const every = this.line * (SPREADS.find((spread) => this.line * spread * this.scale >= APART) ?? SPREADS[SPREADS.length - 1]);
    const first = Math.ceil(a / every) * every;
    return Array.from({ length: Math.max(0, Math.floor((b - first) / every) + 1) }, (_, i) => tidy(first + i * every));
  }
}

function corners([left, bottom, right, top]) {
  return /** @type {Point[]} */ ([[left, bottom], [right, top]]);
}
