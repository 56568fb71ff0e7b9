package dev.fillplane.render;

import dev.fillplane.quantity.UnitSystem;
import dev.fillplane.target.Plane;
import java.util.ArrayList;
import java.util.List;

/** Plans of every kind of floor. */
final class Kinds {

  /** Every kind of floor, in both systems of units. */
  static final List<Planned> ALL = wishes().stream().map(Planned::of).toList();

  private static List<Wish> wishes() {
    List<Wish> wishes = new ArrayList<>();
    for (UnitSystem units : UnitSystem.values()) {
      wishes.add(Wish.over(Floors.rectangleWithIsland()).in(units));
      wishes.add(Wish.over(Floors.ell()).under(new Plane(0.004, 0.0005, -0.0003)).in(units));
      wishes.add(Wish.over(Floors.passage()).in(units));
      wishes.add(Wish.over(Floors.upright()).in(units));
      wishes.add(Wish.over(Floors.closet()).in(units));
      wishes.add(Wish.over(Floors.twoRoomsAndPassage()).under(Plane.level(0)).in(units));
      wishes.add(Wish.over(Floors.rectangleWithIsland()).under(Plane.level(0.034)).in(units));
      wishes.add(Wish.over(Floors.thirty()).withCell(0.4).in(units));
    }
    return wishes;
  }

  private Kinds() {}

  static String name(Planned planned) {
    return planned.request().rooms().get(0).id() + " " + planned.request().units();
  }
}
