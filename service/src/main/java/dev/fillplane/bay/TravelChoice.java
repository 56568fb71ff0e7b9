package dev.fillplane.bay;

import dev.fillplane.room.Position;
import org.locationtech.jts.geom.Envelope;

/**
 * The direction in which a bay is poured, and where it is left.
 *
 * @param travel the direction, and its frame
 * @param wayOut the exit, or a place on the way to it
 * @param extent the bay in that frame
 * @see TravelChooser
 */
record TravelChoice(Travel travel, Position wayOut, Envelope extent) {}
