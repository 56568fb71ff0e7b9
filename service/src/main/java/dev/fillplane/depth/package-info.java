/** Target minus floor: depths, volumes, contours, odds, probes. */
package dev.fillplane.depth;
