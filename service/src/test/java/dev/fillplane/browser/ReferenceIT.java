package dev.fillplane.browser;

import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.openqa.selenium.Keys;

/** The reference at /docs: offline, with the examples of the contract filled in. */
class ReferenceIT extends ServedPages {

  private static final String BAGS = "#operations-parts-countBags";

  @BeforeEach
  void open() {
    browser.open("http://" + host + "/docs", Browser.DESK);
    browser.until(() -> !browser.all(BAGS).isEmpty(), () -> "no operations");
  }

  @Test
  void callsAnOperationWithItsExampleAndAsksNobodyElse() {
    unfold(BAGS);
    String body = browser.find(BAGS + " textarea").getDomProperty("value");
    assertTrue(body.contains("\"thicknessRange\""), body);
    press(BAGS + " .execute");
    browser.says(BAGS + " .live-responses-table", "\"order\": 25");
    browser.accessible();
    browser.askedOnly(host);
  }

  @Test
  void nothingSeriousForThoseWhoListenOrType() {
    browser.accessible();
    for (String operation :
        List.of("pictures-printPourSheet", "jobs-uploadJob", "jobs-deleteJob", "jobs-getJob")) {
      unfold("#operations-" + operation);
    }
    browser.accessible();
    press("#operations-pictures-printPourSheet .tabitem:not(.active) .tablinks");
    browser.until(() -> !browser.all(".model-box-control").isEmpty(), () -> "no schema");
    browser.accessible();
    browser.find(".btn.authorize").sendKeys(Keys.ENTER);
    browser.until(() -> !browser.all(".modal-ux[role=dialog]").isEmpty(), () -> "no dialog");
    browser.accessible();
    browser.focused().sendKeys(Keys.ESCAPE);
    browser.until(() -> browser.all(".modal-ux").isEmpty(), () -> "Escape leaves it open");
    assertTrue(browser.focused().getDomAttribute("class").contains("authorize"), "focus is back");
  }

  private static void unfold(String operation) {
    press(operation + " .opblock-summary-control");
    browser.until(() -> !browser.all(operation + " .execute").isEmpty(), () -> operation);
  }

  private static void press(String selector) {
    browser.run("document.querySelector(arguments[0]).click()", selector);
  }
}
