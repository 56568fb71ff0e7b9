/**
 * Target minus floor: depths, volumes, contours, odds, probes.
 *
 * <p>A depth is in metres and negative where the floor stands above the target; only what is below
 * the target is <em>filled</em>, what stands above it would have to be ground. Volumes are cubic
 * metres.
 */
package dev.fillplane.depth;
