package dev.fillplane.job;

import dev.fillplane.estimate.UnitNeed;
import java.util.Optional;

/**
 * What came of a unit.
 *
 * @param json a plan or, without a need, the problem that there is none
 * @param need what an order must know; only of a plan
 */
public record UnitAnswer(byte[] json, Optional<UnitNeed> need) {}
