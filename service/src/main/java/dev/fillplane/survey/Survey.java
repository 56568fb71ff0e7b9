package dev.fillplane.survey;

import dev.fillplane.quantity.Dimension;
import dev.fillplane.quantity.Measured;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * What was measured on the floor. Exactly one of setups, elevations and table is given.
 *
 * @param setups readings below the plane of a laser, by its positions
 * @param benchmarks points of known elevation
 * @param elevations points whose elevation is measured already
 * @param table the same as one setup or as elevations, for many points
 * @param readingError standard deviation of one reading; 1 mm unless told
 * @param laserTilt standard deviation of the tilt of a laser's plane along x and along y; 0.1 mm/m
 *     unless told, 0 for planes that are level
 * @param misclosureLimit the caller's own limit
 * @param loopLength length of the levelling loop, for the limit of third-order levelling
 * @param ignore points that are left out
 */
public record Survey(
    List<Setup> setups,
    List<Benchmark> benchmarks,
    List<KnownPoint> elevations,
    Optional<Table> table,
    @Measured(Dimension.HEIGHT) Double readingError,
    @Measured(Dimension.SLOPE) Double laserTilt,
    @Measured(Dimension.HEIGHT) OptionalDouble misclosureLimit,
    @Measured(Dimension.PLAN) OptionalDouble loopLength,
    List<String> ignore) {

  /** Standard deviation of one reading where none is told. */
  public static final double DEFAULT_READING_ERROR = 0.001;

  /** Tilt of a rotary laser where none is told (common practice, no source). */
  public static final double DEFAULT_LASER_TILT = 0.0001;

  /** Fills in what was left out. */
  public Survey {
    setups = setups == null ? List.of() : List.copyOf(setups);
    benchmarks = benchmarks == null ? List.of() : List.copyOf(benchmarks);
    elevations = elevations == null ? List.of() : List.copyOf(elevations);
    readingError = readingError == null ? DEFAULT_READING_ERROR : readingError;
    laserTilt = laserTilt == null ? DEFAULT_LASER_TILT : laserTilt;
    ignore = ignore == null ? List.of() : List.copyOf(ignore);
  }
}
