package dev.fillplane.survey;

import dev.fillplane.finding.Finding;
import java.util.List;

/**
 * A survey that was read from a table of text.
 *
 * @param survey ready to stand in a request
 * @param warnings what is odd about the text
 */
public record SurveyImport(Survey survey, List<Finding> warnings) {

  /** Copies the warnings. */
  public SurveyImport {
    warnings = List.copyOf(warnings);
  }
}
