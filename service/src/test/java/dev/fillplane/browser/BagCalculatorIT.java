package dev.fillplane.browser;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;

import org.junit.jupiter.api.Test;
import org.openqa.selenium.WebElement;

/** The element on its demo page, and on a page that is not let in. */
class BagCalculatorIT extends ServedPages {

  @Test
  void demoPageCountsInBothUnits() {
    browser.open("http://" + host + "/elements/bag-calculator.html", Browser.DESK);
    browser.counts("#plain", "25 bags");
    browser.counts("#us", "qt mix water");
    browser.counts("#themed", "17 bags");
    browser.accessible();
    browser.askedOnly(host);
  }

  /** 40 m2 are 430.6 sq ft, 4 mm are 0.1575 in; 40 m2 again, not what 430.6 sq ft would be. */
  @Test
  void otherUnitsConvertWhatIsTyped() {
    browser.open("http://" + host + "/elements/bag-calculator.html", Browser.DESK);
    browser.counts("#plain", "25 bags");
    units("us");
    browser.counts("#plain", "qt mix water");
    assertEquals("430.6", typed("area"));
    assertEquals("0.1575", typed("from"));
    browser.counts("#plain", "25 bags");
    units("metric");
    browser.counts("#plain", "L mix water");
    assertEquals("40", typed("area"));
    assertEquals("4", typed("from"));
  }

  private static void units(String units) {
    browser.run("document.getElementById('plain').setAttribute('units', arguments[0])", units);
  }

  private static String typed(String id) {
    return browser.inside("#plain", "#" + id).getDomProperty("value");
  }

  @Test
  void aBadNumberIsMarked() {
    browser.open("http://" + host + "/elements/bag-calculator.html", Browser.PHONE);
    browser.counts("#plain", "25 bags");
    WebElement area = browser.inside("#plain", "#area");
    area.clear();
    area.sendKeys("-3");
    browser.counts("#plain", "above 0");
    assertEquals("true", browser.inside("#plain", "#area").getDomAttribute("aria-invalid"));
    browser.accessible();
    assertFalse(browser.scrollsSideways());
  }

  @Test
  void onAPageThatIsNotLetInItSaysThatItCannotBeReached() throws Exception {
    try (Shop shop = Shop.open()) {
      shop.sell("http://" + host, "material=\"cement-standard-25\"");
      browser.open("http://" + shop.host() + "/", Browser.DESK);
      browser.counts("fillplane-bags", "not to be reached");
      browser.askedOnly(host, shop.host());
    }
  }
}
