package dev.fillplane.bay;

import dev.fillplane.depth.DeepParts;
import dev.fillplane.depth.DepthField;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import org.locationtech.jts.geom.Polygon;

/**
 * The passes of a pour: one a lift, each over what is deeper than the lifts above it are thick. A
 * single lift has its deep pockets filled first, as a pass of their own, where they are markedly
 * deeper than the rest (common practice, no source; the numbers are an own rule): deeper than twice
 * the mean depth and than 10 mm more than it, on at least 0.5 m2, and 3 mm over that on average.
 */
public final class Layers {

  private static final double MARKED = 0.010;
  private static final double AREA = 0.5;
  private static final double MEAN = 0.003;

  private final DepthField field;

  private Layers(DepthField field) {
    this.field = field;
  }

  /**
   * The passes, the lowest first.
   *
   * @param thicknesses of the lifts where the pour is deepest, from the bottom; at least one
   */
  public static List<Layer> of(DepthField field, List<Double> thicknesses) {
    Layers layers = new Layers(field);
    return thicknesses.size() > 1 ? layers.lifts(thicknesses) : layers.single();
  }

  private List<Layer> lifts(List<Double> thicknesses) {
    List<Layer> layers = new ArrayList<>();
    layers.add(new Layer(thicknesses.size(), field, List.of()));
    double above = 0;
    for (int lift = thicknesses.size() - 1; lift >= 1; lift--) {
      above += thicknesses.get(lift);
      List<List<Polygon>> deep = DeepParts.of(field, above);
      layers.add(0, new Layer(lift, field.lowered(above), within(layers.get(0), deep)));
    }
    return List.copyOf(layers);
  }

  /** Outlines are drawn within 2 cm; a lower lift must not stick out of the one above it. */
  private static List<List<Polygon>> within(Layer above, List<List<Polygon>> deep) {
    if (above.isLast()) {
      return deep;
    }
    return IntStream.range(0, deep.size())
        .mapToObj(room -> common(deep.get(room), above.pockets().get(room)))
        .toList();
  }

  private static List<Polygon> common(List<Polygon> some, List<Polygon> others) {
    List<Polygon> common = new ArrayList<>();
    for (Polygon one : some) {
      for (Polygon other : others) {
        common.addAll(Overlay.common(one, other));
      }
    }
    return common;
  }

  private List<Layer> single() {
    Layer whole = Layer.whole(field);
    double level = Math.max(2 * field.mean(), field.mean() + MARKED);
    if (field.maximum() < level + MEAN) {
      return List.of(whole);
    }
    DepthField lower = field.lowered(level);
    List<List<Polygon>> pockets =
        DeepParts.of(field, level).stream()
            .map(room -> room.stream().filter(part -> isWorthAPass(part, lower)).toList())
            .toList();
    boolean none = pockets.stream().allMatch(List::isEmpty);
    return none ? List.of(whole) : List.of(new Layer(1, lower, pockets), whole);
  }

  private static boolean isWorthAPass(Polygon pocket, DepthField lower) {
    return pocket.getArea() >= AREA && lower.within(pocket).meanDepth() >= MEAN;
  }
}
