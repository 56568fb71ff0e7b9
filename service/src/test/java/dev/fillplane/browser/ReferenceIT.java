package dev.fillplane.browser;

import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.fillplane.web.Server;
import dev.fillplane.web.Settings;
import org.junit.jupiter.api.Test;

/** The reference at /docs: offline, with the examples of the contract filled in. */
class ReferenceIT {

  /** What the library itself lacks; decision 39 says so. */
  private static final String[] OF_THE_LIBRARY = {
    "label", "select-name", "nested-interactive", "scrollable-region-focusable"
  };

  @Test
  void showsEveryOperationWithItsExampleAndAsksNobodyElse() {
    try (Browser browser = Browser.start();
        Server server = Server.start(Settings.at("127.0.0.1", 0))) {
      String host = "127.0.0.1:" + server.port();
      browser.open("http://" + host + "/docs", Browser.DESK);
      browser.until(() -> !browser.all("#operations-parts-countBags").isEmpty(), () -> "no bags");
      browser.run("document.querySelector('#operations-parts-countBags button').click()");
      browser.until(
          () -> !browser.all("#operations-parts-countBags textarea").isEmpty(), () -> "no body");
      String body = browser.find("#operations-parts-countBags textarea").getDomProperty("value");
      assertTrue(body.contains("\"thicknessRange\""), body);
      browser.run("document.querySelector('#operations-parts-countBags .execute').click()");
      browser.says("#operations-parts-countBags .live-responses-table", "\"order\": 25");
      browser.accessible(OF_THE_LIBRARY);
      browser.askedOnly(host);
    }
  }
}
