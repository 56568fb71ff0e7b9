package dev.fillplane.safety;

/** The factors, 0 to 1, by which the load constant is lessened. */
public record LiftingMultipliers(
    double horizontal,
    double vertical,
    double distance,
    double asymmetry,
    double frequency,
    double coupling) {

  double product() {
    return horizontal * vertical * distance * asymmetry * frequency * coupling;
  }
}
