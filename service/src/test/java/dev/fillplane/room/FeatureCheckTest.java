package dev.fillplane.room;

import static org.junit.jupiter.api.Assertions.assertEquals;

import dev.fillplane.finding.Finding;
import dev.fillplane.finding.Findings;
import dev.fillplane.finding.Place;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;

class FeatureCheckTest {

  private static final List<Room> ROOMS =
      RoomBuilder.rooms(
          RoomBuilder.rectangle("hall", 0, 0, 6, 4), RoomBuilder.rectangle("store", 6.1, 0, 3, 4));

  @Test
  void goodOnesAreOnlyReminders() {
    check("moving-joint-carried-through #/features/0", joint(3, 0, 3, 4));
    check("crack-must-be-dormant #/features/0", line(FeatureKind.CRACK, 1, 1, 2, 2));
    check("kept-open #/features/0", Feature.at(FeatureKind.DRAIN, new Position(2, 2), 0.1));
    check("", line(FeatureKind.CABLE, 1, 1, 2, 2));
    check("", Feature.at(FeatureKind.CABLE, new Position(2, 2), 0.1));
    check("", gap(1, 1, 2, 2, 0.01, 0.05));
  }

  @Test
  void linesMayRunThroughSeveralRooms() {
    check("moving-joint-carried-through #/features/0", joint(0, 2, 9.1, 2));
  }

  @Test
  void whatLiesInNoRoomIsToldAtItsPlace() {
    check("feature-outside #/features/0", joint(20, 0, 20, 4));
    check("feature-outside #/features/0", Feature.at(FeatureKind.BOX, new Position(7, 9), 0.1));
    // It only touches the corner of the hall.
    check("feature-outside #/features/0", line(FeatureKind.CRACK, -1, 1, 1, -1));
    // A drain 3 cm beside the wall still belongs to the room.
    check("kept-open #/features/0", Feature.at(FeatureKind.DRAIN, new Position(-0.03, 2), 0.1));
  }

  @Test
  void whatIsNotWholeIsToldAtItsPlace() {
    check("feature-of-no-length #/features/0", joint(3, 1, 3, 1));
    Optional<Position> some = Optional.of(new Position(1, 1));
    check("feature-without-line #/features/0", told(FeatureKind.CRACK, some, null, null));
    check("feature-without-line #/features/0", told(FeatureKind.CABLE, null, null, null));
    check("feature-without-place #/features/0", told(FeatureKind.DRAIN, null, null, null));
    check("feature-without-place #/features/0", told(FeatureKind.DRAIN, some, some, null));
    check("feature-line-and-place #/features/0", told(FeatureKind.CABLE, some, null, some));
    check("gap-without-size #/features/0", line(FeatureKind.GAP, 1, 1, 2, 2));
    check(
        "feature-too-wide #/features/0/width",
        Feature.at(FeatureKind.DRAIN, new Position(2, 2), 2.01));
    check("feature-too-wide #/features/0/depth", gap(1, 1, 2, 2, 0.01, 0));
  }

  @Test
  void jointThatEndsInTheRoomIsTold() {
    check(
        "moving-joint-carried-through #/features/0, moving-joint-ends-inside #/features/0/to",
        joint(3, 0.04, 3, 2));
  }

  @Test
  void eachIsToldAtItsOwnPlace() {
    Findings findings = new Findings();
    List<Feature> features = List.of(joint(3, 0, 3, 4), joint(20, 0, 20, 4), joint(1, 1, 1, 1));
    FeatureCheck.check(features, ROOMS, Place.root().at("features"), findings);
    assertEquals(
        List.of("#/features/1", "#/features/2"),
        findings.errors().stream().map(finding -> finding.place().toString()).toList());
  }

  @Test
  void brokenOutlinesAreNotLookedAt() {
    Findings findings = new Findings();
    findings.error("ring-too-short", Place.root());
    List<Room> broken = RoomBuilder.rooms(new RoomBuilder("hall", 0, 0, 1, 1, 0, 0));
    FeatureCheck.check(List.of(joint(3, 0, 3, 4)), broken, Place.root(), findings);
    assertEquals(1, findings.size());
  }

  @Test
  void doorwaysThatDoNotMeetTheirRoomAreTold() {
    assertEquals(List.of(), doorwayAt(6.1));
    assertEquals(List.of("doorway-does-not-meet #/rooms/0/openings/1"), doorwayAt(6.7));
  }

  private static List<String> doorwayAt(double store) {
    return RoomBuilder.findings(
            RoomBuilder.rectangle("hall", 0, 0, 6, 4)
                .exit("yard", 0, 1, 0, 2)
                .doorway("store", "door", 6, 1, 6, 2),
            RoomBuilder.rectangle("store", store, 0, 3, 4))
        .stream()
        .map(FeatureCheckTest::text)
        .toList();
  }

  private static void check(String expected, Feature feature) {
    Findings findings = new Findings();
    FeatureCheck.check(List.of(feature), ROOMS, Place.root().at("features"), findings);
    List<String> all =
        findings.errors().isEmpty()
            ? findings.warnings().stream().map(FeatureCheckTest::text).toList()
            : findings.errors().stream().map(FeatureCheckTest::text).toList();
    assertEquals(expected, String.join(", ", all));
  }

  private static String text(Finding finding) {
    return finding.code() + " " + finding.place();
  }

  private static Feature joint(double x1, double y1, double x2, double y2) {
    return line(FeatureKind.MOVING_JOINT, x1, y1, x2, y2);
  }

  private static Feature line(FeatureKind kind, double x1, double y1, double x2, double y2) {
    return Feature.line(kind, new Position(x1, y1), new Position(x2, y2));
  }

  private static Feature gap(
      double x1, double y1, double x2, double y2, double width, double depth) {
    return new Feature(
        FeatureKind.GAP,
        Optional.of(new Position(x1, y1)),
        Optional.of(new Position(x2, y2)),
        Optional.empty(),
        OptionalDouble.of(width),
        OptionalDouble.of(depth));
  }

  private static Feature told(
      FeatureKind kind, Optional<Position> from, Optional<Position> to, Optional<Position> at) {
    return new Feature(
        kind, or(from), or(to), or(at), OptionalDouble.empty(), OptionalDouble.empty());
  }

  private static Optional<Position> or(Optional<Position> told) {
    return told == null ? Optional.empty() : told;
  }
}
