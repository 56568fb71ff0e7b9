package dev.fillplane.web;

import dev.fillplane.render.Layer;
import dev.fillplane.web.json.Words;
import java.util.Arrays;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/** Reads the layers of a picture from their query parameter. */
final class Layers {

  private Layers() {}

  /**
   * The layers of a list with commas; the usual ones where none is told.
   *
   * @throws Refusal if a word is not a layer
   */
  static Set<Layer> of(Optional<String> told) {
    return told.map(Layers::read).orElse(Layer.USUAL);
  }

  private static Set<Layer> read(String told) {
    Set<Layer> layers = EnumSet.noneOf(Layer.class);
    for (String word : told.split(",", -1)) {
      layers.add(
          Arrays.stream(Layer.values())
              .filter(layer -> Words.of(layer).equals(word.strip()))
              .findFirst()
              .orElseThrow(Layers::unknown));
    }
    return layers;
  }

  private static Refusal unknown() {
    List<String> words = Arrays.stream(Layer.values()).map(Words::of).toList();
    return Refusal.of(
        Problem.Kind.BAD_REQUEST,
        "The parameter layers must be a list, with commas, of: " + String.join(", ", words) + ".");
  }
}
