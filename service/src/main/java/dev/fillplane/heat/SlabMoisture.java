package dev.fillplane.heat;

import java.util.Optional;
import java.util.OptionalDouble;

/**
 * Whether the slab is dry enough to be primed.
 *
 * @param tests holes to test before priming (ASTM F2170); 0 where there is no slab
 * @param probeDepth depth of the holes as a share of the thickness of the slab
 * @param limit the humidity that was held against; left out where none was told to hold
 * @param barrier what makes it go, where it is needed or told
 */
public record SlabMoisture(
    int tests,
    double probeDepth,
    MoistureVerdict verdict,
    OptionalDouble limit,
    Optional<MoistureBarrier> barrier) {}
