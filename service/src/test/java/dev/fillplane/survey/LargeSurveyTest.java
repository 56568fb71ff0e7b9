package dev.fillplane.survey;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.Random;
import org.junit.jupiter.api.Test;

/** Ten setups over many points: the equations stay small, the heights come out. */
class LargeSurveyTest {

  @Test
  void manyReadingsInTenSetups() {
    Random random = new Random(7);
    double[] elevation = random.doubles(10_000, -0.02, 0.02).toArray();
    SurveyBuilder survey = new SurveyBuilder();
    for (int p = 0; p < elevation.length; p += 100) {
      survey.benchmark(String.valueOf(p), elevation[p]);
    }
    for (int s = 0; s < 10; s++) {
      survey.setup("S" + s);
      for (int p = 0; p < 2_500; p++) {
        int point = (s * 1_000 + p) % elevation.length;
        double reading = 1.5 + 0.1 * s - elevation[point] + 0.001 * random.nextGaussian();
        survey.read(String.valueOf(point), point % 100, point / 100, reading);
      }
    }
    Elevations adjusted = survey.adjust();
    assertEquals(10_000, adjusted.points().size());
    double square = 0;
    for (AdjustedPoint one : adjusted.points()) {
      double off = one.elevation() - elevation[Integer.parseInt(one.point())];
      square += one.deviation() == 0 ? 0 : Math.pow(off / one.deviation(), 2);
    }
    // 9,900 squares of mean 1 and variance 2: four of their mean's deviations.
    assertEquals(1, square / 9_900, 4 * Math.sqrt(2 / 9_900.0));
    assertEquals(0, adjusted.points().get(0).deviation(), 0);
  }
}
