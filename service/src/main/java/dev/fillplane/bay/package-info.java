/**
 * The geometry of pouring: bays, ribbons, the way of travel, joints.
 *
 * <p>A <em>part</em> of the floor is a room, or what moving joints leave of it together. A
 * <em>layer</em> is one pass over the floor: a lift, or the deep pockets of one. A bay is poured in
 * one go: a part, a pocket, or what a dam leaves of one. It is cut into strips across the travel,
 * which leads toward the way out. <em>Along</em> is a distance in the direction of travel,
 * <em>across</em> one to its left; both in metres from the origin of a {@link
 * dev.fillplane.bay.Travel}. A <em>front</em> is where a strip meets one that is poured later: a
 * wet edge while it waits.
 */
package dev.fillplane.bay;
