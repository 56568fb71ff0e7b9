package dev.fillplane.browser;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;

import com.sun.net.httpserver.HttpServer;
import dev.fillplane.web.Server;
import dev.fillplane.web.Settings;
import java.io.IOException;
import java.net.InetAddress;
import java.net.InetSocketAddress;
import java.nio.charset.StandardCharsets;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.openqa.selenium.WebElement;

/** The element on its demo page and on the page of somebody else. */
class BagCalculatorIT {

  private static Browser browser;
  private static Server server;
  private static HttpServer supplier;
  private static String host;

  @BeforeAll
  static void start() throws IOException {
    browser = Browser.start();
    server = Server.start(Settings.at("127.0.0.1", 0));
    host = "127.0.0.1:" + server.port();
    supplier = HttpServer.create(new InetSocketAddress(InetAddress.getLoopbackAddress(), 0), 0);
    supplier.createContext(
        "/",
        exchange -> {
          byte[] page = page().getBytes(StandardCharsets.UTF_8);
          exchange.getResponseHeaders().add("Content-Type", "text/html; charset=utf-8");
          exchange.sendResponseHeaders(200, page.length);
          exchange.getResponseBody().write(page);
          exchange.close();
        });
    supplier.start();
  }

  @AfterAll
  static void stop() {
    if (browser != null) {
      browser.close();
      server.close();
      supplier.stop(0);
    }
  }

  /** The two lines that a supplier adds. */
  private static String page() {
    return """
        <!doctype html><html lang="en"><title>A shop (invented)</title><main><h1>A shop (invented)</h1>
        <script type="module" src="http://%s/elements/bag-calculator.js"></script>
        <fillplane-bags material="cement-standard-25" area="40" from="4" to="8"></fillplane-bags>
        </main></html>
        """
        .formatted(host);
  }

  @Test
  void demoPageCountsInBothUnits() {
    browser.open("http://" + host + "/elements/bag-calculator.html", Browser.DESK);
    says("#plain", "25 bags");
    says("#us", "qt mix water");
    says("#themed", "17 bags");
    browser.accessible();
    browser.askedOnly(host);
  }

  @Test
  void aBadNumberIsMarked() {
    browser.open("http://" + host + "/elements/bag-calculator.html", Browser.PHONE);
    says("#plain", "25 bags");
    WebElement area = part("#plain", "#area");
    area.clear();
    area.sendKeys("-3");
    says("#plain", "above 0");
    assertEquals("true", part("#plain", "#area").getDomAttribute("aria-invalid"));
    browser.accessible();
    assertFalse(
        (Boolean)
            browser.run(
                "return document.documentElement.scrollWidth > document.documentElement.clientWidth"));
  }

  @Test
  void onAPageThatIsNotLetInItSaysThatItCannotBeReached() {
    String other = "localhost:" + supplier.getAddress().getPort();
    browser.open("http://" + other + "/", Browser.DESK);
    says("fillplane-bags", "not to be reached");
    browser.askedOnly(host, other);
  }

  private static WebElement part(String element, String selector) {
    return browser
        .find(element)
        .getShadowRoot()
        .findElement(org.openqa.selenium.By.cssSelector(selector));
  }

  private static void says(String element, String text) {
    browser.until(
        () -> part(element, "#result").getText().contains(text),
        () -> element + " says: " + part(element, "#result").getText());
  }
}
