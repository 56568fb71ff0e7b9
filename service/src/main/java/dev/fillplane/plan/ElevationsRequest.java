package dev.fillplane.plan;

import dev.fillplane.quantity.UnitSystem;
import dev.fillplane.survey.Survey;

/** A survey to reduce and adjust; no room is needed. */
public record ElevationsRequest(UnitSystem units, Survey survey) {}
