package dev.fillplane.safety;

import dev.fillplane.finding.Finding;
import dev.fillplane.finding.Remark;
import dev.fillplane.quantity.Dimension;
import dev.fillplane.quantity.Measured;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * What keeps quartz dust out of lungs at a task.
 *
 * @param airflow that a collector has to draw at least; left out where the maker of the machine
 *     says it, or no machine is used
 * @param filterEfficiency share of the dust that its filter has to hold at least
 * @param respirator to wear besides; left out where none is asked for
 * @param assessment whether somebody has to assess the exposure first, which may ask for a
 *     respirator
 * @param controls what to do
 * @param limits of the air that people breathe
 * @param basis where the controls come from
 * @param warnings what was not told
 */
public record DustCheck(
    @Measured(Dimension.AIRFLOW) OptionalDouble airflow,
    OptionalDouble filterEfficiency,
    Optional<Respirator> respirator,
    boolean assessment,
    List<Remark> controls,
    List<ExposureLimit> limits,
    String basis,
    List<Finding> warnings) {

  /** Copies the lists. */
  public DustCheck {
    controls = List.copyOf(controls);
    limits = List.copyOf(limits);
    warnings = List.copyOf(warnings);
  }
}
