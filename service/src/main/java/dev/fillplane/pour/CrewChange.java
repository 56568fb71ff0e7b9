package dev.fillplane.pour;

import dev.fillplane.finding.Remark;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * A crew that can do more than the one that was told.
 *
 * @param code what is changed
 * @param crew the crew then
 */
record CrewChange(String code, Crew crew) {

  private static final String FILLED = "barrels-filled-ahead";

  /** The larger crews, the least change first. A pump wants hands only. */
  static List<CrewChange> of(Crew crew) {
    List<CrewChange> changes = new ArrayList<>();
    if (crew.pumps()) {
      changes.add(new CrewChange("one-more-person", more(crew, 1, 0)));
      return changes;
    }
    if (crew.preFilled() < crew.barrels()) {
      changes.add(new CrewChange(FILLED, crew.allFilled()));
    }
    changes.add(new CrewChange("one-more-person", more(crew, 1, 0)));
    changes.add(new CrewChange("one-more-mixer", more(crew, 0, 1)));
    changes.add(new CrewChange("one-more-person-and-mixer", more(crew, 1, 1)));
    if (crew.bagsPerBatch() == 1 && crew.barrels() >= 2 * crew.mixers()) {
      changes.add(new CrewChange("two-bags-per-batch", twoBags(crew)));
    }
    changes.add(new CrewChange("two-more-people-and-mixer", more(crew, 2, 1)));
    return changes;
  }

  private static Crew more(Crew crew, int people, int mixers) {
    return crew.with(
        crew.people() + people,
        crew.mixers() + mixers,
        crew.barrels() + 2 * mixers,
        crew.bagsPerBatch());
  }

  private static Crew twoBags(Crew crew) {
    return crew.with(crew.people(), crew.mixers(), crew.barrels(), 2);
  }

  /** Whether it asks for nobody and nothing more. */
  boolean isSmall() {
    return code.equals(FILLED);
  }

  Remark remark() {
    return new Remark(code, values());
  }

  /** Both this and something else. */
  Remark with(OtherPour other) {
    Map<String, Object> both = new LinkedHashMap<>(other.remark().values());
    both.putAll(values());
    return new Remark(other.withCrew(), both);
  }

  private Map<String, Object> values() {
    Map<String, Object> values = new LinkedHashMap<>();
    values.put("people", crew.people());
    values.put("mixers", crew.mixers());
    values.put("barrels", crew.barrels());
    values.put("filled", crew.preFilled());
    values.put("bags", crew.bagsPerBatch());
    return values;
  }
}
