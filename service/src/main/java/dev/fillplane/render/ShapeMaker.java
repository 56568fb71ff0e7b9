package dev.fillplane.render;

import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;

/** Tells what a shape is, part by part. */
final class ShapeMaker {

  private final String kind;
  private Optional<String> what = Optional.empty();
  private Optional<String> id = Optional.empty();
  private Optional<String> room = Optional.empty();
  private Optional<String> bay = Optional.empty();
  private OptionalInt number = OptionalInt.empty();
  private OptionalInt lift = OptionalInt.empty();
  private OptionalDouble depth = OptionalDouble.empty();
  private OptionalDouble height = OptionalDouble.empty();
  private OptionalDouble shim = OptionalDouble.empty();
  private OptionalDouble area = OptionalDouble.empty();
  private OptionalDouble volume = OptionalDouble.empty();
  private OptionalDouble length = OptionalDouble.empty();
  private OptionalDouble start = OptionalDouble.empty();
  private OptionalDouble end = OptionalDouble.empty();
  private OptionalDouble edgeAge = OptionalDouble.empty();

  ShapeMaker(String kind) {
    this.kind = kind;
  }

  ShapeMaker what(Enum<?> constant) {
    return what(constant.name().toLowerCase(Locale.ROOT).replace('_', '-'));
  }

  ShapeMaker what(String word) {
    what = Optional.of(word);
    return this;
  }

  ShapeMaker id(String name) {
    id = Optional.of(name);
    return this;
  }

  ShapeMaker room(String name) {
    room = Optional.of(name);
    return this;
  }

  ShapeMaker bay(String name) {
    bay = Optional.of(name);
    return this;
  }

  ShapeMaker number(int place) {
    number = OptionalInt.of(place);
    return this;
  }

  ShapeMaker lift(int layer) {
    lift = OptionalInt.of(layer);
    return this;
  }

  ShapeMaker depth(double told) {
    depth = OptionalDouble.of(told);
    return this;
  }

  ShapeMaker height(double told) {
    height = OptionalDouble.of(told);
    return this;
  }

  ShapeMaker shim(double told) {
    shim = OptionalDouble.of(told);
    return this;
  }

  ShapeMaker area(double told) {
    area = OptionalDouble.of(told);
    return this;
  }

  ShapeMaker volume(double told) {
    volume = OptionalDouble.of(told);
    return this;
  }

  ShapeMaker length(double told) {
    length = OptionalDouble.of(told);
    return this;
  }

  ShapeMaker time(double from, double to) {
    start = OptionalDouble.of(from);
    end = OptionalDouble.of(to);
    return this;
  }

  ShapeMaker edgeAge(double age) {
    edgeAge = age > 0 ? OptionalDouble.of(age) : OptionalDouble.empty();
    return this;
  }

  PlanShape at(PlanShapeGeometry geometry) {
    return PlanShape.of(
        new PlanShapeProperties(
            kind, what, id, room, bay, number, lift, depth, height, shim, area, volume, length,
            start, end, edgeAge),
        geometry);
  }
}
