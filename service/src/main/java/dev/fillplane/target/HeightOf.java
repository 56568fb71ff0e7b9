package dev.fillplane.target;

/** What a height is the height of. */
public enum HeightOf {
  POUR,
  FINISH
}
