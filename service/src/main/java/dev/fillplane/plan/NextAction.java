package dev.fillplane.plan;

/** What is to be done with a floor next. */
public enum NextAction {
  READY,
  READ_MORE,
  GRIND,
  PATCH,
  GRIND_AND_PATCH,
  POUR,
  SECOND_POUR
}
