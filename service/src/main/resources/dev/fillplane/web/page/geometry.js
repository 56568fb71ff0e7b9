/** Small plane geometry for the drawing board. Points are [x, y] in plan units. */

/** @typedef {[number, number]} Point */

/** @param {Point} a @param {Point} b */
export function distance(a, b) {
  return Math.hypot(a[0] - b[0], a[1] - b[1]);
}

/** The nearest point of the line from a to b. @param {Point} p @param {Point} a @param {Point} b */
export function footOn(p, a, b) {
  const [dx, dy] = [b[0] - a[0], b[1] - a[1]];
  const square = dx * dx + dy * dy;
  const share = square === 0 ? 0 : ((p[0] - a[0]) * dx + (p[1] - a[1]) * dy) / square;
  const held = Math.max(0, Math.min(1, share));
  return /** @type {Point} */ ([a[0] + held * dx, a[1] + held * dy]);
}

/**
 * Every wall of some rooms.
 * @param {any[]} rooms
 * @returns {{ room: number, a: Point, b: Point }[]}
 */
export function walls(rooms) {
  return rooms.flatMap((room, i) =>
    (room.outline?.coordinates ?? []).flatMap((ring) =>
      ring.slice(1).map((b, k) => ({ room: i, a: ring[k], b })),
    ),
  );
}

/**
 * An opening of some width in the wall nearest to a point, and the room on its other side.
 * @param {any[]} rooms
 * @param {Point} p
 * @param {number} width
 */
export function openingNear(rooms, p, width) {
  const near = walls(rooms)
    .map((wall) => ({ ...wall, off: distance(p, footOn(p, wall.a, wall.b)) }))
    .sort((one, other) => one.off - other.off);
  if (near.length === 0) {
    return undefined;
  }
  const { room, a, b } = near[0];
  const length = distance(a, b);
  const half = Math.min(width, length) / 2;
  const middle = Math.max(half, Math.min(length - half, distance(a, footOn(p, a, b))));
  const at = (along) => [0, 1].map((k) => tidy(a[k] + ((b[k] - a[k]) * along) / length));
  const centre = /** @type {Point} */ (at(middle));
  const other = near.find((wall) => wall.room !== room && distance(centre, footOn(centre, wall.a, wall.b)) < width / 20);
  return { room, from: at(middle - half), to: at(middle + half), into: other && rooms[other.room].id };
}

/** A box round points: [left, bottom, right, top]. @param {Point[]} points */
export function boxOf(points) {
  const xs = points.map((point) => point[0]);
  const ys = points.map((point) => point[1]);
  return [Math.min(...xs), Math.min(...ys), Math.max(...xs), Math.max(...ys)];
}

/** Millimetres are fine enough. @param {number} value */
export function tidy(value) {
  return Math.round(value * 1000) / 1000;
}
