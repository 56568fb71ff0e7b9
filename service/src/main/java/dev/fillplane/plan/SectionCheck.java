package dev.fillplane.plan;

import dev.fillplane.finding.Findings;
import dev.fillplane.finding.Place;
import dev.fillplane.flatness.MeasuredLine;
import dev.fillplane.flatness.SectionRules;
import dev.fillplane.quantity.Amount;
import dev.fillplane.quantity.Dimension;
import dev.fillplane.room.Room;
import java.util.Arrays;
import java.util.List;
import java.util.OptionalDouble;
import java.util.OptionalInt;

/**
 * Whether measured lines lie in their sections as ASTM E1155 asks. Only what was told is checked:
 * lines without places and rooms are taken to lie rightly.
 */
final class SectionCheck {

  private static final Place ROOT = Place.root();

  private final LineSections sections;
  private final List<MeasuredLine> lines;
  private final List<Room> rooms;
  private final OptionalDouble area;
  private final Findings findings;
  private boolean stands = true;

  SectionCheck(LineSections sections, FlatnessCheckRequest request, Findings findings) {
    this.sections = sections;
    this.lines = request.lines();
    this.rooms = request.rooms();
    this.area = request.area();
    this.findings = findings;
  }

  /**
   * Warns of every rule that is broken.
   *
   * @param differences of height over 10 ft, by line
   * @return whether the F-numbers of the lines stand for their sections
   */
  boolean check(int[] differences) {
    for (int line = 0; line < lines.size(); line++) {
      if (lines.get(line).isPlaced()) {
        checkEdges(line);
        checkParallels(line);
      }
    }
    for (int room = 0; room < rooms.size(); room++) {
      checkSide(room);
    }
    checkCounts(differences);
    return stands;
  }

  private void checkEdges(int line) {
    if (rooms.isEmpty()) {
      return;
    }
    MeasuredLine told = lines.get(line);
    OptionalInt room = sections.room(line);
    double distance =
        room.isEmpty()
            ? 0
            : SectionRules.fromEdge(
                sections.polygon(room.getAsInt()),
                told.from().orElseThrow(),
                told.to().orElseThrow());
    if (SectionRules.isShort(distance, SectionRules.FROM_EDGE)) {
      broken(
          "line-near-edge",
          ROOT.at("lines").at(line),
          "line",
          told.id(),
          "distance",
          length(distance),
          "least",
          length(SectionRules.FROM_EDGE));
    }
  }

  private void checkParallels(int line) {
    MeasuredLine told = lines.get(line);
    for (int other = 0; other < line; other++) {
      MeasuredLine earlier = lines.get(other);
      OptionalDouble apart =
          earlier.isPlaced() && sections.room(other).equals(sections.room(line))
              ? SectionRules.apart(
                  told.from().orElseThrow(),
                  told.to().orElseThrow(),
                  earlier.from().orElseThrow(),
                  earlier.to().orElseThrow())
              : OptionalDouble.empty();
      if (apart.isPresent() && SectionRules.isShort(apart.getAsDouble(), SectionRules.APART)) {
        broken(
            "lines-too-close",
            ROOT.at("lines").at(line),
            "line",
            told.id(),
            "other",
            earlier.id(),
            "distance",
            length(apart.getAsDouble()),
            "least",
            length(SectionRules.APART));
        return;
      }
    }
  }

  private void checkSide(int room) {
    double side = SectionRules.side(sections.polygon(room));
    if (sections.linesIn(room).length > 0 && SectionRules.isShort(side, SectionRules.SIDE)) {
      broken(
          "section-too-narrow",
          ROOT.at("rooms").at(room),
          "room",
          rooms.get(room).id(),
          "side",
          length(side),
          "least",
          length(SectionRules.SIDE));
    }
  }

  /** An area that is told is one section; else each room that holds lines is one. */
  private void checkCounts(int[] differences) {
    if (area.isPresent()) {
      checkCount(Arrays.stream(differences).sum(), area.getAsDouble(), ROOT.at("area"));
      return;
    }
    for (int room = 0; room < rooms.size(); room++) {
      int[] inRoom = sections.linesIn(room);
      if (inRoom.length > 0) {
        int count = Arrays.stream(inRoom).map(line -> differences[line]).sum();
        checkCount(count, sections.polygon(room).getArea(), ROOT.at("rooms").at(room));
      }
    }
  }

  private void checkCount(int count, double section, Place place) {
    int least = SectionRules.leastDifferences(section);
    if (count < least) {
      broken(
          "too-few-differences",
          place,
          "count",
          count,
          "area",
          Amount.of(section, Dimension.AREA),
          "least",
          least);
    }
  }

  private void broken(String code, Place place, Object... namesAndValues) {
    stands = false;
    findings.warning(code, place, namesAndValues);
  }

  private static Amount length(double metres) {
    return Amount.of(metres, Dimension.PLAN);
  }
}
