package dev.fillplane.plan;

import static org.junit.jupiter.api.Assertions.assertEquals;

import dev.fillplane.flatness.GrindAndPatch;
import dev.fillplane.flatness.Hollow;
import dev.fillplane.flatness.Hump;
import dev.fillplane.flatness.Passes;
import dev.fillplane.material.Catalogue;
import dev.fillplane.material.DataSheet;
import dev.fillplane.room.Outline;
import dev.fillplane.room.Position;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import org.junit.jupiter.api.Test;

/** Which pass comes next over a floor of 30 m2; the rule is our own. */
class NextPassRuleTest {

  private static final double FLOOR = 30;

  /** Makes 15 L a bag and takes lifts from 3 mm. */
  private static final DataSheet SHEET =
      Catalogue.sheets().stream()
          .filter(sheet -> sheet.id().equals(Optional.of("cement-standard-25")))
          .findFirst()
          .orElseThrow();

  @Test
  void floorThatPassesIsReady() {
    assertNext(NextAction.READY, "next-ready", Passes.WITHIN, work(1, 0, 1, 0.001));
  }

  @Test
  void whatIsNotSureIsReadFirst() {
    assertNext(NextAction.READ_MORE, "next-read-more", Passes.UNCLEAR, work(1, 0, 1, 0.001));
    assertNext(NextAction.READ_MORE, "next-read-more", Passes.OVER, work(0, 0, 0, 0));
  }

  @Test
  void humpsAndHollows() {
    assertNext(NextAction.GRIND, "next-grind", Passes.OVER, work(1, 2, 0, 0));
    assertNext(NextAction.PATCH, "next-patch", Passes.OVER, work(0, 0, 2, 0.01));
    assertNext(
        NextAction.GRIND_AND_PATCH, "next-grind-and-patch", Passes.OVER, work(1, 2, 2, 0.01));
  }

  /** 2 m2 at 8 m2 an hour are a quarter of an hour; 10 L and 3 % waste, 1.5 % residue one bag. */
  @Test
  void workIsCounted() {
    NextPass next = next(Passes.OVER, work(1, 2, 3, 0.01), true, Optional.of(SHEET));
    assertEquals(5, next.area(), 1e-12);
    assertEquals(0.01, next.volume(), 1e-12);
    assertEquals(900, next.minutes(), 1e-9);
    assertEquals(OptionalInt.of(1), next.bags());
  }

  /** Over a third of the floor, or as much as 2 mm over all of it: 60 L, with the sheet 90 L. */
  @Test
  void muchToPatchIsPoured() {
    assertNext(NextAction.PATCH, "next-patch", Passes.OVER, work(0, 0, 10, 0.01));
    assertNext(NextAction.SECOND_POUR, "next-second-pour", Passes.OVER, work(0, 0, 10.1, 0.01));
    assertNext(NextAction.PATCH, "next-patch", Passes.OVER, work(0, 0, 5, 0.059));
    assertNext(NextAction.SECOND_POUR, "next-second-pour", Passes.OVER, work(0, 0, 5, 0.061));
    NextPass poured = next(Passes.OVER, work(1, 2, 5, 0.1), true, Optional.of(SHEET));
    assertEquals(NextAction.SECOND_POUR, poured.action());
    assertEquals(0.1 + 30 * 0.003, poured.volume(), 1e-12);
    assertEquals(FLOOR, poured.area());
    assertEquals(900, poured.minutes(), 1e-9);
    NextPass before = next(Passes.OVER, work(0, 0, 5, 0.061), false, Optional.empty());
    assertEquals(NextAction.POUR, before.action());
    assertEquals("next-pour", before.why().code());
  }

  private static void assertNext(
      NextAction action, String why, Passes verdict, GrindAndPatch work) {
    NextPass next = next(verdict, work, true, Optional.empty());
    assertEquals(action, next.action());
    assertEquals(why, next.why().code());
    assertEquals(OptionalInt.empty(), next.bags());
  }

  private static NextPass next(
      Passes verdict, GrindAndPatch work, boolean poured, Optional<DataSheet> sheet) {
    return new NextPassRule(FLOOR, work, poured, sheet).choose(verdict);
  }

  private static GrindAndPatch work(int humps, double ground, double patched, double volume) {
    Outline outline = new Outline(List.of(List.of(new Position(0, 0))));
    Hump hump = new Hump(0, 0, outline, ground, 0.001, 0.001);
    Hollow hollow = new Hollow(0, 0, outline, patched, 0.002, volume, OptionalInt.empty());
    return new GrindAndPatch(
        ground,
        volume,
        Collections.nCopies(humps, hump),
        Collections.nCopies(patched > 0 ? 1 : 0, hollow));
  }
}
