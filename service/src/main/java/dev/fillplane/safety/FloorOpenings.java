package dev.fillplane.safety;

import dev.fillplane.room.Feature;
import dev.fillplane.room.FeatureKind;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;

/** Drains, boxes and flanges that stay open: people step into them, and water runs to them. */
final class FloorOpenings implements Rule {

  private static final String BASIS = "common practice, no source";

  @Override
  public Optional<Note> note(SafetyInput job) {
    List<Feature> open =
        job.features().stream().filter(feature -> feature.kind().staysOpen()).toList();
    if (open.isEmpty() || !job.isWork()) {
      return Optional.empty();
    }
    String kinds =
        open.stream()
            .map(Feature::kind)
            .distinct()
            .sorted()
            .map(FeatureKind::title)
            .collect(Collectors.joining(", "));
    return Optional.of(
        Note.of("floor-openings", Severity.CAUTION, BASIS, "count", open.size(), "kinds", kinds));
  }
}
