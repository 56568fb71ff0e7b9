package dev.fillplane.browser;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.fillplane.web.Server;
import dev.fillplane.web.Settings;
import java.io.IOException;
import java.util.Map;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

/** All that people look at, below a path of a reverse proxy; and what it says when that fails. */
class ProxiedPageIT {

  private static final String BUSY =
      """
      {"type": "urn:fillplane:problem:busy", "title": "The service is busy", "status": 503,
       "detail": "Every place for a calculation is taken; try again in a moment."}
      """;

  private static Browser browser;
  private static Server server;
  private static Proxy proxy;

  @BeforeAll
  static void start() throws IOException {
    browser = Browser.start();
    server = Server.start(Settings.at("127.0.0.1", 0));
    proxy = Proxy.before(server.port());
  }

  @AfterAll
  static void stop() {
    if (browser != null) {
      browser.close();
    }
    if (proxy != null) {
      proxy.close();
      server.close();
    }
  }

  @AfterEach
  void heal() {
    offline(false);
    proxy.heal();
  }

  @Test
  void thePagePlansBelowAPath() {
    sample();
    browser.until(
        () -> browser.find("#map-image").getDomProperty("alt").startsWith("Plan of 3 rooms"),
        () -> "no map");
    browser.find("#import-box summary").click();
    browser.find("#import-text").sendKeys("point,x,y,reading\n1,0,0,12o8\n");
    browser.find("#import").click();
    browser.says("#import-wrong", "Line 2, reading");
    browser.askedOnly(proxy.host());
  }

  @Test
  void theReferenceCallsBelowAPath() {
    String bags = "#operations-parts-countBags";
    browser.open(proxy.at("docs/"), Browser.DESK);
    browser.until(() -> !browser.all(bags).isEmpty(), () -> "no operations");
    browser.run("document.querySelector(arguments[0]).click()", bags + " button");
    browser.until(() -> !browser.all(bags + " .execute").isEmpty(), () -> "no form");
    browser.run("document.querySelector(arguments[0]).click()", bags + " .execute");
    browser.says(bags + " .live-responses-table", "\"order\": 25");
    browser.askedOnly(proxy.host());
  }

  @Test
  void theCalculatorCountsBelowAPath() {
    browser.open(proxy.at("elements/bag-calculator.html"), Browser.DESK);
    browser.counts("#plain", "25 bags");
    assertEquals(
        "rgb(241, 239, 232)",
        browser.run("return getComputedStyle(document.documentElement).backgroundColor"));
    browser.askedOnly(proxy.host());
  }

  @Test
  void aBusyServiceIsSaidSoAndNothingTypedIsLost() {
    sample();
    proxy.fail(503, "application/problem+json", BUSY);
    type("/crew/people", "4");
    browser.says("#trouble", "Every place for a calculation is taken");
    browser.says("#trouble", "What you typed is still here");
    assertEquals("4", field("/crew/people").getDomProperty("value"));
    browser.accessible();
    proxy.heal();
    browser.find("#again").click();
    browser.says("#status", "to order");
    assertEquals("results", browser.focused().getDomAttribute("id"), "the button is gone");
    assertEquals("4", field("/crew/people").getDomProperty("value"));
  }

  @Test
  void anAnswerThatIsNotOfTheServiceIsSaidSo() {
    sample();
    proxy.fail(502, "text/html", "<h1>Bad gateway</h1>");
    type("/crew/people", "5");
    browser.says("#trouble", "answered with status 502");
    assertFalse(browser.text("#trouble").contains("Bad gateway"));
    assertEquals("5", field("/crew/people").getDomProperty("value"));
  }

  @Test
  void planningGoesOnWhenTheNetworkIsBack() {
    sample();
    offline(true);
    type("/crew/people", "4");
    browser.says("#trouble", "This device is offline. What you typed is still here.");
    assertTrue(browser.find("#again").isDisplayed());
    offline(false);
    browser.says("#status", "to order");
    assertEquals("4", field("/crew/people").getDomProperty("value"));
  }

  private static void sample() {
    browser.open(proxy.at(""), Browser.DESK);
    browser.says("#status", "Draw a room");
    browser.find("#sample").click();
    browser.says("#status", "to order");
  }

  private static void offline(boolean is) {
    browser.command("Network.enable", Map.of());
    browser.command(
        "Network.emulateNetworkConditions",
        Map.of("offline", is, "latency", 0, "downloadThroughput", -1, "uploadThroughput", -1));
  }

  private static org.openqa.selenium.WebElement field(String pointer) {
    return browser.find("[data-at='" + pointer + "']");
  }

  private static void type(String pointer, String text) {
    field(pointer).clear();
    field(pointer).sendKeys(text);
  }
}
