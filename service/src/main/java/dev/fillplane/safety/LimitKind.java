package dev.fillplane.safety;

/** How binding a limit of exposure is. */
public enum LimitKind {
  /** May not be passed. */
  LIMIT,
  /** From here on duties begin. */
  ACTION_LEVEL,
  /** Advised by a health agency or a learned body. */
  RECOMMENDED
}
