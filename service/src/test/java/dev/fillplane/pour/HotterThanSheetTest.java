package dev.fillplane.pour;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertSame;

import dev.fillplane.finding.Remark;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import org.junit.jupiter.api.Test;

class HotterThanSheetTest {

  private static final Change COOLER = new Change(Remark.of("cooler-water"), Verdict.HOLDS);
  private static final Change MIXER = new Change(Remark.of("one-more-mixer"), Verdict.HOLDS);

  @Test
  void inTheRangeNothingChanges() {
    Pour pour = pour(Verdict.HOLDS);
    assertSame(pour, HotterThanSheet.judge(pour, false, false));
  }

  @Test
  void hotterIsTightAtBest() {
    assertEquals(Verdict.TIGHT, judged(Verdict.HOLDS, true, false).verdict());
    assertEquals(Verdict.TIGHT, judged(Verdict.HOLDS, false, true).verdict());
    assertEquals(Verdict.BREAKS, judged(Verdict.BREAKS, true, true).verdict());
    Pour pour = judged(Verdict.HOLDS, true, false);
    assertEquals("hotter-than-sheet", pour.reasons().get(0).code());
    assertEquals(OptionalInt.empty(), pour.crew().needed());
  }

  @Test
  void coolerWaterMendsTheMixButNotTheSite() {
    assertEquals(
        List.of(COOLER, new Change(MIXER.remark(), Verdict.TIGHT)),
        judged(Verdict.BREAKS, false, true).changes());
    assertEquals(
        List.of(
            new Change(COOLER.remark(), Verdict.TIGHT), new Change(MIXER.remark(), Verdict.TIGHT)),
        judged(Verdict.BREAKS, true, true).changes());
  }

  private static Pour judged(Verdict verdict, boolean site, boolean mix) {
    return HotterThanSheet.judge(pour(verdict), site, mix);
  }

  private static Pour pour(Verdict verdict) {
    return new Pour(
        verdict,
        List.of(),
        List.of(),
        List.of(),
        List.of(),
        new PourTotals(0, 0, 0, 0, 0, 0, 0, Optional.empty()),
        List.of(),
        new CrewNeed(3, 1, OptionalInt.of(3)),
        List.of(COOLER, MIXER),
        600);
  }
}
