package dev.fillplane.pour;

import dev.fillplane.finding.Remark;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalInt;

/**
 * A pour at temperatures that the data sheet does not allow. Its times do not hold there and are
 * not extrapolated, so nobody can say that the pour holds: it is tight at best.
 */
public final class OutsideSheet {

  private OutsideSheet() {}

  /**
   * The pour as it may be judged.
   *
   * @param site whether air or floor are outside, which no water mends
   * @param mix whether the mix is outside, which cooler water mends
   */
  public static Pour judge(Pour pour, boolean site, boolean mix) {
    if (!site && !mix) {
      return pour;
    }
    List<Remark> reasons = new ArrayList<>(pour.reasons());
    reasons.add(Remark.of("temperature-outside-sheet"));
    return new Pour(
        atBestTight(pour.verdict()),
        reasons,
        pour.bays(),
        pour.batches(),
        pour.joints(),
        new CrewNeed(pour.crew().people(), pour.crew().mixers(), OptionalInt.empty()),
        pour.changes().stream().map(change -> judge(change, site)).toList(),
        pour.minutes());
  }

  private static Change judge(Change change, boolean site) {
    boolean mended = !site && change.remark().code().equals("cooler-water");
    return mended ? change : new Change(change.remark(), atBestTight(change.verdict()));
  }

  private static Verdict atBestTight(Verdict verdict) {
    return verdict == Verdict.HOLDS ? Verdict.TIGHT : verdict;
  }
}
