/**
 * Pictures, tables, shapes and printed sheets of a plan.
 *
 * <p>A <em>layer</em> draws one kind of thing and asks {@link dev.fillplane.render.Labels} for room
 * for its texts, so that no two texts overlap. A <em>view</em> turns plan coordinates (m, y up)
 * into picture coordinates (px, y down). A <em>depth class</em> is a range of depths between two
 * round numbers, shown in one colour.
 *
 * <p>A <em>pour page</em> is the sheet that goes to the floor, as HTML; a <em>pour sheet</em> is
 * the same page laid out as PDF. Sentences of notes, remarks and warnings are made by the caller,
 * see {@link dev.fillplane.render.Wording}. Whatever a caller named is escaped by {@link
 * dev.fillplane.render.Markup}.
 */
package dev.fillplane.render;
