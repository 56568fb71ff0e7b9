package dev.fillplane.pour;

import java.util.List;

/** A part of a room poured in one go. */
public record PouredBay(String id, String room, int lift, List<Ribbon> ribbons) {

  /** Copies the ribbons. */
  public PouredBay {
    ribbons = List.copyOf(ribbons);
  }
}
