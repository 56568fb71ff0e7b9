/**
 * From readings below a laser to elevations.
 *
 * <p>A <em>reading</em> is the distance from the plane of the laser down to a point, so larger is
 * lower. A <em>setup</em> is one position of the laser. A <em>benchmark</em> is a point of known
 * elevation. The <em>misclosure</em> is what is left over round a loop. All heights are metres.
 */
package dev.fillplane.survey;
