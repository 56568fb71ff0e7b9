package dev.fillplane.plan;

import java.util.OptionalDouble;
import java.util.OptionalInt;

/**
 * When a survey is enough; exactly one of the two is told.
 *
 * @param bags above the likely ones that the survey's uncertainty may ask for
 * @param readings how many are taken
 */
public record SurveyWanted(OptionalDouble bags, OptionalInt readings) {}
