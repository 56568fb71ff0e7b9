package dev.fillplane.safety;

/** What is lifted; the equation covers only what does not move in itself. */
public enum LoadKind {
  FULL_BAG,
  PART_BAG,
  BUCKET
}
