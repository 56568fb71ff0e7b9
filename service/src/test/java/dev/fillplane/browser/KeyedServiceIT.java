package dev.fillplane.browser;

import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.fillplane.web.Access;
import dev.fillplane.web.Server;
import dev.fillplane.web.Settings;
import dev.fillplane.web.key.KeyBook;
import dev.fillplane.web.key.KeyFile;
import dev.fillplane.web.key.NewKey;
import dev.fillplane.web.key.Scope;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A service that asks for keys: its own page, and the calculator on the page of a supplier. */
class KeyedServiceIT {

  private static Browser browser;
  private static Shop known;
  private static Shop stranger;
  private static Server server;
  private static String host;
  private static String own;

  @BeforeAll
  static void start(@TempDir Path folder) throws Exception {
    browser = Browser.start();
    known = Shop.open();
    stranger = Shop.open();
    NewKey calculate = key(List.of(Scope.CALCULATE), List.of());
    NewKey forBrowsers = key(List.of(Scope.BROWSER), List.of("http://" + known.host()));
    Path file = folder.resolve("keys.json");
    KeyFile.write(file, List.of(calculate.key(), forBrowsers.key()));
    Access access = Access.withKeys(KeyBook.open(file, unused -> {}));
    server = Server.start(Settings.at("127.0.0.1", 0).withAccess(access));
    host = "127.0.0.1:" + server.port();
    own = calculate.text();
    known.sell("http://" + host, "key=\"" + forBrowsers.text() + "\"");
    stranger.sell("http://" + host, "key=\"" + forBrowsers.text() + "\"");
  }

  @AfterAll
  static void stop() {
    if (browser != null) {
      browser.close();
      known.close();
      stranger.close();
      server.close();
    }
  }

  private static NewKey key(List<Scope> scopes, List<String> origins) {
    return NewKey.make(
        new NewKey.Wish("a test", scopes, origins, OptionalInt.empty(), Optional.empty()),
        LocalDate.of(2026, 1, 2));
  }

  @Test
  void thePageAsksForTheKeyAndPlansWithIt() {
    browser.open("http://" + host + "/", Browser.DESK);
    browser.says("#trouble", "key");
    browser.find("#service-key").sendKeys(own + "\t");
    browser.says("#status", "Draw a room");
    browser.find("#sample").click();
    browser.says("#status", "to order");
    assertTrue(browser.all("#material option").size() > 3, "materials after the key");
  }

  @Test
  void theCalculatorCountsOnThePageThatTheKeyNames() {
    browser.open("http://" + known.host() + "/", Browser.DESK);
    browser.counts("fillplane-bags", "25 bags");
    browser.accessible();
    browser.askedOnly(host, known.host());
  }

  @Test
  void theSameKeyIsNoGoodOnAnotherPage() {
    browser.open("http://" + stranger.host() + "/", Browser.DESK);
    browser.counts("fillplane-bags", "not to be reached");
  }
}
