package dev.fillplane.bay;

import org.locationtech.jts.geom.Polygon;

/**
 * A part of a room that no moving joint crosses, without what stays open; a whole room where there
 * is neither.
 *
 * @param room the number of its room
 * @param polygon on plan; never changed
 */
record FloorPart(int room, Polygon polygon) {}
