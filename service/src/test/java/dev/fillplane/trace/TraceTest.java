package dev.fillplane.trace;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * W3C Trace Context, Recommendation of 23 November 2021, sections 3.2 and 3.3; the first value is
 * its example.
 */
class TraceTest {

  private static final String ID = "4bf92f3577b34da6a3ce929d0e0e4736";
  private static final String SPAN = "00f067aa0ba902b7";
  private static final String TOLD = "00-" + ID + "-" + SPAN + "-01";

  @Test
  void goesOnWithTheTraceOfTheCaller() {
    Trace trace = trace(TOLD, "");
    assertEquals(ID, trace.id());
    assertNotEquals(SPAN, trace.span());
    assertEquals("00-" + ID + "-" + trace.span() + "-01", trace.parent());
    assertNotEquals(trace.span(), trace.next().span());
    assertEquals(ID, trace.next().id());
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "",
        "00-" + ID + "-" + SPAN,
        "00-" + ID + "-" + SPAN + "-01-more",
        "00-" + ID + "-" + SPAN + "-1",
        "0-" + ID + "-" + SPAN + "-01",
        "ff-" + ID + "-" + SPAN + "-01",
        "00-4BF92F3577B34DA6A3CE929D0E0E4736-" + SPAN + "-01",
        "00-" + ID + "-00F067AA0BA902B7-01",
        "00-00000000000000000000000000000000-" + SPAN + "-01",
        "00-" + ID + "-0000000000000000-01",
        "01-" + ID + "-" + SPAN + "-01more",
        " " + TOLD,
        TOLD + "\n"
      })
  void beginsATraceOfItsOwn(String told) {
    Trace trace = trace(told, "a=1");
    assertNotEquals(ID, trace.id());
    assertTrue(trace.parent().matches("00-[0-9a-f]{32}-[0-9a-f]{16}-00"), trace.parent());
    assertEquals(Optional.empty(), trace.state());
  }

  @Test
  void readsWhatItKnowsOfAVersionToCome() {
    assertEquals(ID, trace("cc-" + ID + "-" + SPAN + "-01", "").id());
    assertEquals(ID, trace("cc-" + ID + "-" + SPAN + "-01-what is this", "").id());
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "congo=t61rcWkgMzE",
        "rojo=00f067aa0ba902b7,congo=t61rcWkgMzE",
        "a@b=1, c= d",
        "a=1,,b=2"
      })
  void handsOnWhatOthersSay(String state) {
    assertEquals(Optional.of(state), trace(TOLD, state).state());
  }

  @ParameterizedTest
  @ValueSource(
      strings = {"", ",", "a", "A=1", "a=1,a=2", "a=b=c", "a=", "a=\u00e9", "a@B=1", "@b=1"})
  void dropsWhatIsNotProper(String state) {
    Trace trace = trace(TOLD, state);
    assertEquals(ID, trace.id());
    assertEquals(Optional.empty(), trace.state());
  }

  @Test
  void dropsALongState() {
    StringBuilder members = new StringBuilder("a0=1");
    for (int i = 1; i < 32; i++) {
      members.append(",a").append(i).append("=1");
    }
    assertEquals(Optional.of(members.toString()), trace(TOLD, members.toString()).state());
    assertEquals(Optional.empty(), trace(TOLD, members + ",z=1").state());
    String wide = "a=" + "x".repeat(255) + ",b=" + "x".repeat(254);
    assertEquals(514, wide.length());
    assertEquals(Optional.empty(), trace(TOLD, wide).state());
  }

  private static Trace trace(String parent, String state) {
    return Trace.of(Optional.of(parent), Optional.of(state));
  }
}
