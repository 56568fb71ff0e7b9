/**
 * The rooms on plan: outlines, openings, what they are made of, and whether all that makes sense.
 *
 * <p>Plan coordinates are metres in a local grid of the caller.
 */
package dev.fillplane.room;
