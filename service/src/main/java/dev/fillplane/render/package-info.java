/**
 * Pictures and tables of a plan, as text.
 *
 * <p>A <em>layer</em> draws one kind of thing and asks {@link dev.fillplane.render.Labels} for room
 * for its texts, so that no two texts overlap. A <em>view</em> turns plan coordinates (m, y up)
 * into picture coordinates (px, y down). A <em>depth class</em> is a range of depths between two
 * round numbers, shown in one colour.
 */
package dev.fillplane.render;
