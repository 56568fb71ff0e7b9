package dev.fillplane.browser;

import dev.fillplane.web.Server;
import dev.fillplane.web.Settings;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;

/** A browser and a service without keys for the tests of a class, which run one by one. */
abstract class ServedPages {

  static Browser browser;
  static Server server;
  static String host;

  @BeforeAll
  static void start() {
    browser = Browser.start();
    server = Server.start(Settings.at("127.0.0.1", 0));
    host = "127.0.0.1:" + server.port();
  }

  @AfterAll
  static void stop() {
    if (browser != null) {
      browser.close();
      server.close();
    }
  }
}
