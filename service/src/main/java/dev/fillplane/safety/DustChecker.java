package dev.fillplane.safety;

import dev.fillplane.finding.Findings;
import dev.fillplane.finding.Place;
import dev.fillplane.heat.ToldRange;
import dev.fillplane.quantity.Dimension;

/**
 * Controls, respirator and limits for work that raises quartz dust.
 *
 * <p>Controls are those of the US table, which is the only one that names them by task; elsewhere
 * they are a starting point of the assessment that the law there asks for.
 */
public final class DustChecker {

  private static final ToldRange WHEEL = new ToldRange(Dimension.HEIGHT, 0.02, 0.6);
  private static final double WHOLE_DAY = 8;

  private static final Place ROOT = Place.root();

  private DustChecker() {}

  /**
   * Judges a task.
   *
   * @throws dev.fillplane.finding.FindingsException if a grinder held in the hands comes without
   *     its wheel, or with one that no such grinder has
   */
  public static DustCheck check(DustCheckRequest request) {
    Findings findings = new Findings();
    checkWheel(request, findings);
    findings.throwIfErrors();
    DustControls controls = controls(request, findings);
    if (request.jurisdiction().filter(where -> where != Jurisdiction.US).isPresent()) {
      findings.warning("dust-controls-of-the-us", ROOT.at("jurisdiction"));
    }
    return new DustCheck(
        controls.airflow(),
        controls.filterEfficiency(),
        controls.respirator(),
        controls.assessment(),
        controls.controls(),
        SilicaLimits.of(request.jurisdiction()),
        controls.basis(),
        findings.warnings());
  }

  private static DustControls controls(DustCheckRequest request, Findings findings) {
    return switch (request.task()) {
      case HAND_GRINDING ->
          DustControls.handGrinding(
              request.wheelDiameter().orElseThrow(),
              hours(request, findings),
              indoors(request, findings));
      case FLOOR_GRINDING -> DustControls.floorGrinding(indoors(request, findings));
      case BAG_MIXING -> DustControls.bagMixing(indoors(request, findings));
      case CLEAN_UP -> DustControls.cleanUp();
    };
  }

  private static void checkWheel(DustCheckRequest request, Findings findings) {
    Place place = ROOT.at("wheelDiameter");
    if (request.wheelDiameter().isPresent()) {
      WHEEL.check(request.wheelDiameter().getAsDouble(), "diameter of the wheel", place, findings);
    } else if (request.task() == DustTask.HAND_GRINDING) {
      findings.error("wheel-wanted", place);
    }
  }

  private static double hours(DustCheckRequest request, Findings findings) {
    if (request.hours().isEmpty()) {
      findings.warning("dust-hours-assumed", ROOT.at("hours"), "most", DustControls.LONG_HOURS);
    }
    return request.hours().orElse(WHOLE_DAY);
  }

  private static boolean indoors(DustCheckRequest request, Findings findings) {
    if (request.indoors().isEmpty()) {
      findings.warning("dust-indoors-assumed", ROOT.at("indoors"));
    }
    return request.indoors().orElse(true);
  }
}
