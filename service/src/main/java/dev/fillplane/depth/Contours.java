package dev.fillplane.depth;

import java.util.List;

/** Lines of equal depth, the shallowest first. On the wire a GeoJSON feature collection. */
public record Contours(List<Contour> contours) {

  /** Copies the list. */
  public Contours {
    contours = List.copyOf(contours);
  }
}
