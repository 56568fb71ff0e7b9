package dev.fillplane.pour;

import dev.fillplane.finding.Remark;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalInt;

/**
 * A pour hotter than the data sheet allows. Its times are shorter there by nobody knows how much
 * and are not extrapolated, so nobody can say that the pour holds: it is tight at best. Cold spoils
 * a pour as well, but leaves more time, so that a warning does.
 */
public final class HotterThanSheet {

  private HotterThanSheet() {}

  /**
   * The pour as it may be judged.
   *
   * @param site whether air or floor are too hot, which no water mends
   * @param mix whether the mix is too hot, which cooler water mends
   */
  public static Pour judge(Pour pour, boolean site, boolean mix) {
    if (!site && !mix) {
      return pour;
    }
    List<Remark> reasons = new ArrayList<>(pour.reasons());
    reasons.add(Remark.of("hotter-than-sheet"));
    return new Pour(
        atBestTight(pour.verdict()),
        reasons,
        pour.bays(),
        pour.batches(),
        pour.workers(),
        pour.totals(),
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
