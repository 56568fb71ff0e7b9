package dev.fillplane.browser;

import static java.nio.charset.StandardCharsets.ISO_8859_1;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.openqa.selenium.Keys;
import org.openqa.selenium.WebElement;

/** The page at / as people use it. */
class PageIT extends ServedPages {

  private static final String TABLE =
      """
      point;x;y;reading
      1;0.3;0.3;1208
      2;3.0;0.4;1205
      3;5.7;0.3;1210
      4;0.4;3.7;1214
      5;3.1;3.6;1209
      6;5.6;3.7;1216
      """;

  @BeforeEach
  void open() {
    browser.open("http://" + host + "/", Browser.DESK);
    browser.says("#status", "Draw a room");
  }

  @Test
  void fromEmptyToAPlan() {
    typeRoom("0 0\n6 0\n6 4\n0 4");
    addExit("2.5 0", "3.4 0");
    browser.says("#status", "at least three readings");
    paste(TABLE);
    planned();
    assertTrue(browser.text("#verdict").contains("The wet edge"), browser.text("#verdict"));
    assertTrue(browser.text("#numbers").contains("Bags to order"), browser.text("#numbers"));
    assertTrue(browser.text("#order").contains("room 1: ribbons 1 to"), browser.text("#order"));
    browser.until(
        () -> browser.find("#map-image").getDomProperty("alt").startsWith("Plan of 1 room"),
        () -> browser.find("#map-image").getDomProperty("alt"));
    browser.until(() -> browser.find("#timeline").isDisplayed(), () -> "no timeline");
    browser.askedOnly(host);
  }

  @Test
  void drawnWithKeysAlone() {
    browser.find("#board").sendKeys(Keys.ARROW_LEFT, Keys.ENTER);
    steps(Keys.ARROW_RIGHT, 3);
    steps(Keys.ARROW_UP, 2);
    steps(Keys.ARROW_LEFT, 3);
    browser.find("#close-room").sendKeys(Keys.ENTER);
    browser.find("#tools input[value=exit]").sendKeys(Keys.SPACE);
    browser.find("#board").sendKeys(Keys.ARROW_DOWN, Keys.ENTER);
    browser.find("#tools input[value=reading]").sendKeys(Keys.SPACE);
    read("1208", Keys.ARROW_DOWN, 1);
    read("1205", Keys.ARROW_RIGHT, 1);
    read("1210", Keys.ARROW_UP, 1);
    planned();
    assertTrue(browser.text("#rooms").contains("Room 1: room 1, 1 opening"));
    assertEquals(3, browser.all("#readings tbody tr").size());
  }

  @Test
  void drawnWithAPointer() {
    clickBoard(0.2, 0.8);
    clickBoard(0.8, 0.8);
    clickBoard(0.8, 0.2);
    clickBoard(0.2, 0.2);
    clickBoard(0.2, 0.8);
    assertEquals(4, field(corners()).getDomProperty("value").split("\n").length);
    browser.find("#tools input[value=doorway]").sendKeys(Keys.SPACE);
    clickBoard(0.5, 0.5);
    assertEquals(1, browser.all(".opening-shape.doorway").size());
  }

  @Test
  void aBadNumberIsMarkedAtItsField() {
    sample();
    type("/conditions/air", "warm");
    browser.says("#status", "cannot be read");
    WebElement air = field("/conditions/air");
    assertEquals("true", air.getDomAttribute("aria-invalid"));
    assertTrue(noteAt("/conditions/air").contains("Type a number"), noteAt("/conditions/air"));
    type("/conditions/air", "24");
    planned();
    assertEquals(null, field("/conditions/air").getDomAttribute("aria-invalid"));
  }

  @Test
  void whatTheServiceRefusesIsShownAtTheField() {
    sample();
    type("/conditions/air", "90");
    browser.says("#trouble", "Mend what is marked");
    assertEquals("true", field("/conditions/air").getDomAttribute("aria-invalid"));
    assertTrue(noteAt("/conditions/air").contains("90"), noteAt("/conditions/air"));
    assertEquals(List.of(), browser.all("label .finding"), "a note is no part of a name");
    browser.find("#trouble button").click();
    focusedAt("/conditions/air");
    browser.accessible();
  }

  @Test
  void aWrongLineOfATableIsNamed() {
    browser.find("#import-box summary").click();
    browser.find("#import-text").sendKeys("point,x,y,reading\n1,0,0,12o8\n");
    browser.find("#import").click();
    browser.says("#import-wrong", "Line 2, reading");
  }

  @Test
  void aServiceThatIsAwayIsSaidSo() {
    sample();
    browser.command("Network.enable", Map.of());
    browser.command("Network.setBlockedURLs", Map.of("urls", List.of("*/v1/plans*")));
    try {
      type("/crew/people", "4");
      browser.says("#status", "The service does not answer");
    } finally {
      browser.command("Network.setBlockedURLs", Map.of("urls", List.of()));
    }
    browser.find("#again").click();
    planned();
  }

  @Test
  void aPictureThatFailsLeavesThePlanAndNoOldPicture() {
    sample();
    browser.until(() -> browser.find("#map").isDisplayed(), () -> "no map");
    browser.command("Network.enable", Map.of());
    browser.command("Network.setBlockedURLs", Map.of("urls", List.of("*/v1/depth-maps*")));
    try {
      type("/crew/people", "4");
      browser.says("#status", "The plan stands, but its map is missing");
      assertFalse(browser.find("#map").isDisplayed());
      browser.until(() -> browser.find("#timeline").isDisplayed(), () -> "no timeline");
    } finally {
      browser.command("Network.setBlockedURLs", Map.of("urls", List.of()));
    }
  }

  @Test
  void aFloorThatGaveWayToAnotherComesBack() {
    typeRoom("0 0\n6 0\n6 4\n0 4");
    sample();
    browser.find("#back").click();
    browser.says("#status", "at least three readings");
    assertEquals("0 0\n6 0\n6 4\n0 4", field(corners()).getDomProperty("value"));
    browser.find("#back").click();
    planned();
  }

  @Test
  void otherUnitsConvertWhatIsTyped() {
    sample();
    String bags = browser.text("#numbers .value");
    assertEquals("", field("/rooms/0/absorbency").getDomProperty("value"), "as unless told");
    browser.find("#units input[value=us]").sendKeys(Keys.SPACE);
    browser.until(() -> browser.text("#numbers").contains("qt a batch"), () -> "still metric");
    assertEquals("78.8", field("/conditions/air").getDomProperty("value"));
    assertEquals(bags, browser.text("#numbers .value"));
    browser.find("#units input[value=metric]").sendKeys(Keys.SPACE);
    assertEquals("26", field("/conditions/air").getDomProperty("value"));
  }

  @Test
  void otherUnitsConvertWhatIsOnlyBegunAndKeepWhatIsNoNumber() {
    sample();
    browser.find("#hot-air").clear();
    browser.find("#hot-air").sendKeys("35");
    type("/crew/carryDistance", "far");
    browser.find("#tools input[value=reading]").sendKeys(Keys.SPACE);
    browser.find("#board").sendKeys(Keys.ARROW_LEFT, Keys.ENTER);
    browser.focused().sendKeys("1200");
    browser.find("#units input[value=us]").sendKeys(Keys.SPACE);
    assertEquals("95", browser.find("#hot-air").getDomProperty("value"));
    assertEquals("47.24", browser.find("#new-reading").getDomProperty("value"));
    assertTrue(browser.text("#reading-place").endsWith(" ft"), browser.text("#reading-place"));
    assertEquals("far", field("/crew/carryDistance").getDomProperty("value"));
    browser.says("#status", "cannot be read");
  }

  @Test
  void theFocusStaysWithTheRowsThatComeAndGo() {
    typeRoom("0 0\n6 0\n6 4\n0 4");
    press("[data-add='/rooms/0/openings']");
    focusedAt("/rooms/0/openings/0/id");
    press("[data-add='/rooms/0/openings']");
    focusedAt("/rooms/0/openings/1/id");
    press("[data-at='/rooms/0/openings/0'] > button");
    focusedAt("/rooms/0/openings/0/id");
    press("[data-at='/rooms/0/openings/0'] > button");
    assertEquals("/rooms/0/openings", browser.focused().getDomAttribute("data-add"));
    press("[data-add='/survey/setups/0/readings']");
    focusedAt("/survey/setups/0/readings/0/point");
    press("[data-add='/survey/setups/0/readings']");
    focusedAt("/survey/setups/0/readings/1/point");
    press("#readings tbody tr:first-child button");
    focusedAt("/survey/setups/0/readings/0/point");
    press("#readings tbody tr:first-child button");
    assertEquals("/survey/setups/0/readings", browser.focused().getDomAttribute("data-add"));
    press("[data-add='/survey/setups']");
    focusedAt("/survey/setups/1/id");
    press("[data-at='/rooms/0'] > .buttons button:last-child");
    assertEquals("/rooms", browser.focused().getDomAttribute("data-add"));
  }

  @Test
  void aRowThatGoesTakesItsUnreadableTextWithItAndNoOther() {
    sample();
    type("/survey/setups/0/readings/1/reading", "wet");
    type("/survey/setups/0/readings/3/reading", "dry");
    press("[data-at='/survey/setups/0/readings'] tbody tr:nth-child(2) button");
    assertEquals("dry", field("/survey/setups/0/readings/2/reading").getDomProperty("value"));
    browser.says("#status", "cannot be read");
    type("/survey/setups/0/readings/2/reading", "1190");
    planned();
  }

  @Test
  void theLaserIsMovedByHand() {
    typeRoom("0 0\n6 0\n6 4\n0 4");
    addExit("2.5 0", "3.4 0");
    paste(TABLE);
    planned();
    press("[data-add='/survey/setups']");
    browser.focused().sendKeys("II");
    planned();
    reading(1, 0, "6", "", "", "1250");
    press("[data-add='/survey/setups/1/readings']");
    reading(1, 1, "1", "", "", "1242");
    press("[data-add='/survey/setups/1/readings']");
    reading(1, 2, "7", "3", "2", "1240");
    planned();
    assertEquals(7, browser.all("#board .reading-shape").size());
    assertEquals(List.of(), browser.all("#job .finding.error"));
    browser.accessible();
    press("[data-at='/survey/setups/1'] > button");
    planned();
    assertEquals(1, browser.all("#readings table").size());
  }

  /** Bought and poured out, primer must be enough: a whole litre or quart up, as on the sheet. */
  @Test
  void thePrimerIsThatOfThePourSheet() {
    sample();
    String primer =
        browser.run("return [...document.querySelectorAll('.card')].at(-1).innerText").toString();
    browser.find("#save-page").click();
    String sheet = read(browser.saved("pour-sheet.html"));
    String liquid = primer.lines().skip(1).findFirst().orElseThrow().replace('\u00a0', ' ');
    assertTrue(sheet.contains("Primer: " + liquid + ", "), primer);
  }

  @Test
  void aSavedRequestIsOpenedAgain() throws IOException {
    sample();
    type("/crew/people", "5");
    planned();
    browser.find("#save-request").click();
    Path file = browser.saved("pour-request.json");
    assertTrue(Files.readString(file).contains("\"confidence\": 0.9"), "parts without a field");
    browser.find("#empty").click();
    browser.says("#status", "Draw a room");
    browser.find("#open-request").sendKeys(file.toString());
    planned();
    assertEquals("5", field("/crew/people").getDomProperty("value"));
    browser.find("#save-batches").click();
    assertTrue(Files.readString(browser.saved("batches.csv")).startsWith("bay,"));
    browser.find("#save-sheet").click();
    assertEquals(
        "%PDF", new String(Files.readAllBytes(browser.saved("pour-sheet.pdf")), 0, 4, ISO_8859_1));
  }

  @Test
  void hotAndCoolSideBySide() {
    sample();
    browser.find("#compare").click();
    browser.says("#compared", "Hot day");
    List<String> closes =
        browser.all("#compared tbody tr:nth-child(4) td").stream()
            .map(cell -> cell.getText().replace(" min", ""))
            .toList();
    assertTrue(
        Double.parseDouble(closes.get(0)) < Double.parseDouble(closes.get(1)), closes.toString());
  }

  @Test
  void nothingSeriousForThoseWhoListenOrTypeAndNoSidewaysScrollOnAPhone() {
    browser.accessible();
    sample();
    browser.accessible();
    browser.open("http://" + host + "/", Browser.PHONE);
    sample();
    browser.accessible();
    assertFalse(browser.scrollsSideways());
    browser.askedOnly(host);
  }

  // --- how

  private static void sample() {
    browser.find("#sample").click();
    planned();
  }

  private static void planned() {
    browser.until(
        () ->
            browser.find("#results").getDomAttribute("aria-busy") == null
                && browser.text("#status").contains("to order"),
        () -> "it says: " + browser.text("#status"));
  }

  private static void press(String selector) {
    browser.find(selector).sendKeys(Keys.ENTER);
  }

  private static void focusedAt(String pointer) {
    assertEquals(pointer, browser.focused().getDomAttribute("data-at"));
  }

  /** What is said of a field to those who listen. */
  private static String noteAt(String pointer) {
    String id = field(pointer).getDomAttribute("aria-describedby");
    return browser.text("#" + id);
  }

  private static void reading(int setup, int row, String point, String x, String y, String said) {
    String at = "/survey/setups/" + setup + "/readings/" + row;
    type(at + "/point", point);
    type(at + "/x", x);
    type(at + "/y", y);
    type(at + "/reading", said);
  }

  private static String read(Path file) {
    try {
      return Files.readString(file);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static WebElement field(String pointer) {
    return browser.find("[data-at='" + pointer + "']");
  }

  private static void type(String pointer, String text) {
    field(pointer).clear();
    field(pointer).sendKeys(text);
  }

  private static void typeRoom(String corners) {
    browser.find("#type-room").click();
    focusedAt(corners());
    browser.focused().sendKeys(corners);
  }

  private static void addExit(String from, String to) {
    browser.find(".room .buttons button").click();
    type("/rooms/0/openings/0/from", from);
    type("/rooms/0/openings/0/to", to);
  }

  private static void paste(String table) {
    browser.find("#import-box summary").click();
    browser.find("#import-text").sendKeys(table);
    browser.find("#import").click();
  }

  /** Moves the cross by tens of steps and sets a corner. */
  private static void steps(Keys arrow, int tens) {
    WebElement board = browser.find("#board");
    for (int i = 0; i < tens; i++) {
      board.sendKeys(Keys.chord(Keys.SHIFT, arrow));
    }
    board.sendKeys(Keys.ENTER);
  }

  private static void read(String reading, Keys arrow, int tens) {
    steps(arrow, tens);
    browser.focused().sendKeys(reading, Keys.ENTER);
  }

  private static void clickBoard(double right, double down) {
    browser.run(
        """
        const board = document.getElementById('board');
        board.scrollIntoView({ behavior: 'instant', block: 'center' });
        const box = board.getBoundingClientRect();
        board.dispatchEvent(new MouseEvent('click', { bubbles: true,
          clientX: box.left + arguments[0] * box.width, clientY: box.top + arguments[1] * box.height }));
        """,
        right,
        down);
  }

  private static String corners() {
    return "/rooms/0/outline/coordinates";
  }
}
