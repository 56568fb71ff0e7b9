/** Draws the floor as it is told so far: walls, openings, readings, and what is being drawn. */

import { svg } from './dom.js';
import { boxOf } from './geometry.js';
import { pointsOf } from './survey.js';

/** @typedef {import('./view-box.js').ViewBox} ViewBox */
/** @typedef {import('./geometry.js').Point} Point */

/** Width of a bold letter of the names and what a line of them needs, in pixels. */
const LETTER = 7.5;
const LINE = 26;

/**
 * @param {SVGSVGElement} board
 * @param {ViewBox} view
 * @param {any} request
 * @param {{ corners: Point[], cursor: Point | null }} drawing
 */
export function drawBoard(board, view, request, drawing) {
  board.setAttribute('viewBox', `0 0 ${view.width} ${view.height}`);
  board.replaceChildren(
    background(view),
    ...request.rooms.map((room) => roomShape(view, room)),
    ...request.rooms.flatMap((room) => (room.openings ?? []).map((opening) => openingShape(view, opening))),
    ...pointsOf(request.survey).map((point) => readingShape(view, point)),
    ...request.rooms.map((room, i) => nameOf(view, room, i)),
    unfinished(view, drawing.corners, drawing.cursor),
    drawing.cursor ? cross(view, drawing.cursor) : svg('g'),
  );
}

function background(view) {
  const group = svg('g', { class: 'lines' });
  for (const x of view.lines(0)) {
    const [px] = view.toPixels([x, 0]);
    group.append(svg('path', { d: `M${px} 0V${view.height}` }), label(px + 3, view.height - 4, x));
  }
  for (const y of view.lines(1)) {
    const [, py] = view.toPixels([0, y]);
    group.append(svg('path', { d: `M0 ${py}H${view.width}` }), label(3, py - 3, y));
  }
  return group;
}

function label(x, y, value) {
  return svg('text', { x, y }, String(value));
}

function roomShape(view, room) {
  const rings = room.outline?.coordinates ?? [];
  const d = rings.map((ring) => `${line(view, ring.slice(0, -1))}Z`).join('');
  return svg('path', { class: 'room-shape', d, 'fill-rule': 'evenodd' });
}

/** The name of a room where it has the place for it, or else its number in the list, or nothing. */
function nameOf(view, room, i) {
  const [ring = []] = room.outline?.coordinates ?? [];
  const [, bottom, , top] = boxOf(ring);
  if (ring.length === 0 || (top - bottom) * view.scale < LINE) {
    return svg('g');
  }
  const corner = upperLeft(ring);
  const right = Math.max(...ring.filter((p) => p[1] === corner[1]).map((p) => p[0]));
  const letters = ((right - corner[0]) * view.scale - 10) / LETTER;
  const [x, y] = view.toPixels(corner);
  const text = [room.id ?? '', String(i + 1)].find((name) => name.length <= letters) ?? '';
  return svg('text', { class: 'room-name', x: x + 6, y: y + 16 }, text);
}

function upperLeft(ring) {
  return ring.reduce((best, p) => (p[1] - p[0] > best[1] - best[0] ? p : best));
}

function openingShape(view, opening) {
  if (!opening.from || !opening.to) {
    return svg('g');
  }
  const d = line(view, [opening.from, opening.to]);
  return svg('g', { class: `opening-shape ${opening.kind}` },
    svg('path', { d, class: 'gap' }), svg('path', { d, class: 'sill' }));
}

function readingShape(view, point) {
  const [x, y] = view.toPixels([point.x, point.y]);
  return svg('g', { class: 'reading-shape' },
    svg('circle', { cx: x, cy: y, r: 3 }), svg('title', {}, `Point ${point.point}`));
}

function unfinished(view, corners, cursor) {
  const all = cursor ? [...corners, cursor] : corners;
  return svg('g', { class: 'unfinished' },
    svg('path', { d: corners.length > 0 ? line(view, all) : '' }),
    ...corners.map((corner) => {
      const [cx, cy] = view.toPixels(corner);
      return svg('circle', { cx, cy, r: 5 });
    }));
}

function cross(view, cursor) {
  const [x, y] = view.toPixels(cursor);
  return svg('path', { class: 'cross', d: `M${x - 9} ${y}h18M${x} ${y - 9}v18` });
}

function line(view, points) {
  return points.map((point, i) => `${i === 0 ? 'M' : 'L'}${view.toPixels(point).join(' ')}`).join('');
}
