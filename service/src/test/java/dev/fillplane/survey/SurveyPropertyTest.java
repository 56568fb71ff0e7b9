package dev.fillplane.survey;

import static dev.fillplane.survey.SurveyBuilder.plane;
import static dev.fillplane.survey.SurveyBuilder.point;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.fillplane.finding.Findings;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import java.util.function.UnaryOperator;
import org.junit.jupiter.api.Test;

/** What holds for every survey, on seeded random networks. */
class SurveyPropertyTest {

  private static final int NETWORKS = 200;
  private static final double EXACT = 1e-12;

  private static Elevations adjust(Survey survey) {
    return SurveyAdjustment.adjust(survey, SurveyBuilder.PLACE, new Findings());
  }

  private static Reading changed(Reading one, String point, double shift) {
    return new Reading(point, one.x(), one.y(), one.reading() + shift);
  }

  private static Setup each(Setup setup, UnaryOperator<Reading> change) {
    List<Reading> readings = setup.readings().stream().map(change).toList();
    return new Setup(setup.id(), readings, setup.error(), setup.x(), setup.y());
  }

  private static void assertSame(AdjustedPoint expected, AdjustedPoint actual) {
    assertEquals(expected.elevation(), actual.elevation(), EXACT);
    assertEquals(expected.deviation(), actual.deviation(), EXACT);
    assertEquals(expected.residual(), actual.residual(), EXACT);
  }

  /** A laser stood a decimetre higher: its plane is, nothing else. */
  @Test
  void shiftingASetupMovesOnlyItsPlane() {
    for (long seed = 0; seed < NETWORKS; seed++) {
      Survey survey = RandomNetwork.make(seed);
      List<Setup> setups = new ArrayList<>(survey.setups());
      boolean datum = survey.benchmarks().isEmpty();
      int moved = setups.size() - 1;
      if (datum && moved == 0) {
        continue;
      }
      setups.set(moved, each(setups.get(moved), r -> changed(r, r.point(), 0.1)));
      Elevations before = adjust(survey);
      Elevations after = adjust(RandomNetwork.with(setups, survey.benchmarks()));
      for (int p = 0; p < before.points().size(); p++) {
        assertSame(before.points().get(p), after.points().get(p));
      }
      for (int s = 0; s < setups.size(); s++) {
        double by = s == moved ? 0.1 : 0;
        double plane = before.setups().get(s).planeElevation();
        assertEquals(plane + by, after.setups().get(s).planeElevation(), EXACT);
      }
    }
  }

  /** To the last bit, for the order of readings and for names. */
  @Test
  void orderOfReadingsAndNamesDoNotMatter() {
    for (long seed = 0; seed < NETWORKS; seed++) {
      Survey made = RandomNetwork.make(seed);
      double tilt = seed % 2 * 0.0003;
      Survey survey = RandomNetwork.with(made.setups(), made.benchmarks(), tilt);
      Elevations before = adjust(survey);
      List<Setup> renamed = new ArrayList<>();
      for (Setup setup : RandomNetwork.shuffled(survey, new Random(seed)).setups()) {
        renamed.add(each(setup, r -> changed(r, "point " + hash(r.point()), 0)));
      }
      List<Benchmark> benchmarks =
          survey.benchmarks().stream()
              .map(b -> new Benchmark("point " + hash(b.point()), b.elevation()))
              .toList();
      Elevations after = adjust(RandomNetwork.with(renamed, benchmarks, tilt));
      for (AdjustedPoint one : before.points()) {
        AdjustedPoint other = point(after, "point " + hash(one.point()));
        assertEquals(one.elevation(), other.elevation(), 0);
        assertEquals(one.deviation(), other.deviation(), 0);
        assertEquals(one.residual(), other.residual(), 0);
      }
      assertEquals(before.setups(), after.setups());
      assertEquals(before.misclosure(), after.misclosure());
      assertEquals(before.loops(), after.loops());
      assertEquals(before.ties(), after.ties());
      assertEquals(
          before.suspects().stream().map(Suspect::standardized).toList(),
          after.suspects().stream().map(Suspect::standardized).toList());
    }
  }

  private static int hash(String name) {
    return (Integer.parseInt(name) * 37 + 11) % 101;
  }

  /** With benchmarks no setup is special. */
  @Test
  void orderOfSetupsDoesNotMatterWithBenchmarks() {
    int compared = 0;
    for (long seed = 0; seed < NETWORKS; seed++) {
      Survey survey = RandomNetwork.make(seed);
      if (survey.benchmarks().isEmpty()) {
        continue;
      }
      compared++;
      List<Setup> turned = new ArrayList<>(survey.setups());
      Collections.reverse(turned);
      Elevations before = adjust(survey);
      Elevations after = adjust(RandomNetwork.with(turned, survey.benchmarks()));
      before.points().forEach(one -> assertSame(one, point(after, one.point())));
      before.setups().forEach(s -> assertEquals(s.planeElevation(), plane(after, s.id()), EXACT));
    }
    assertTrue(compared > 50);
  }

  @Test
  void oneMoreReadingRaisesNoDeviation() {
    for (long seed = 0; seed < NETWORKS; seed++) {
      Survey survey = RandomNetwork.make(seed);
      Random random = new Random(seed);
      List<Setup> more = new ArrayList<>(survey.setups());
      int s = random.nextInt(more.size());
      Setup other = more.get(random.nextInt(more.size()));
      List<Reading> readings = new ArrayList<>(more.get(s).readings());
      readings.add(other.readings().get(random.nextInt(other.readings().size())));
      Setup old = more.get(s);
      more.set(s, new Setup(old.id(), readings, old.error(), old.x(), old.y()));
      Elevations before = adjust(survey);
      Elevations after = adjust(RandomNetwork.with(more, survey.benchmarks()));
      for (AdjustedPoint one : before.points()) {
        assertTrue(point(after, one.point()).deviation() <= one.deviation() + EXACT);
      }
    }
  }
}
