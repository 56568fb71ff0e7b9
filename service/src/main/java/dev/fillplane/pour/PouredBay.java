package dev.fillplane.pour;

import java.util.List;

/**
 * A part of a room poured in one go.
 *
 * @param lift the layer it belongs to, from the bottom, from 1
 * @param pocket whether it fills a deep part before the rest is poured over it
 */
public record PouredBay(String id, String room, int lift, boolean pocket, List<Ribbon> ribbons) {

  /** Copies the ribbons. */
  public PouredBay {
    ribbons = List.copyOf(ribbons);
  }
}
