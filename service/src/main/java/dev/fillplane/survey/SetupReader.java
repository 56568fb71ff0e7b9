package dev.fillplane.survey;

import dev.fillplane.finding.Findings;
import dev.fillplane.finding.Place;
import java.util.HashSet;
import java.util.List;
import java.util.Set;

/** Flattens setups and their readings. */
final class SetupReader {

  private final Survey survey;
  private final Place place;
  private final Findings findings;
  private final PointNames.Given names = new PointNames.Given();
  private final int[] setup;
  private final int[] point;
  private final int[] row;
  private final double[] reading;
  private final double[] x;
  private final double[] y;
  private int count;

  private SetupReader(Survey survey, Place place, Findings findings) {
    this.survey = survey;
    this.place = place.at("setups");
    this.findings = findings;
    int readings = survey.setups().stream().mapToInt(one -> one.readings().size()).sum();
    setup = new int[readings];
    point = new int[readings];
    row = new int[readings];
    reading = new double[readings];
    x = new double[readings];
    y = new double[readings];
  }

  /** The readings of all setups; errors where an id is repeated or x comes without y. */
  static Observations read(Survey survey, Place place, Findings findings) {
    return new SetupReader(survey, place, findings).read();
  }

  private Observations read() {
    List<Setup> setups = survey.setups();
    Set<String> ids = new HashSet<>();
    for (int s = 0; s < setups.size(); s++) {
      String id = setups.get(s).id();
      if (!ids.add(id)) {
        findings.error("setup-repeated", place.at(s).at("id"), "setup", id);
      }
      List<Reading> readings = setups.get(s).readings();
      for (int r = 0; r < readings.size(); r++) {
        add(s, r, readings.get(r));
      }
    }
    return new Observations(
        setups.stream().map(Setup::id).toArray(String[]::new),
        setups.stream().mapToDouble(one -> one.error().orElse(survey.readingError())).toArray(),
        names,
        setup,
        point,
        reading,
        x,
        y,
        i -> place.at(setup[i]).at("readings").at(row[i]));
  }

  private void add(int ofSetup, int atRow, Reading one) {
    if (one.x().isPresent() != one.y().isPresent()) {
      Place reading = place.at(ofSetup).at("readings").at(atRow);
      Place there = reading.at(one.x().isPresent() ? "x" : "y");
      findings.error("x-without-y", there, "point", one.point());
    }
    setup[count] = ofSetup;
    row[count] = atRow;
    point[count] = names.number(one.point());
    reading[count] = one.reading();
    x[count] = one.x().orElse(Double.NaN);
    y[count] = one.y().orElse(Double.NaN);
    count++;
  }
}
