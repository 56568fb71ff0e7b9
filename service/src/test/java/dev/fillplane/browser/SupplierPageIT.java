package dev.fillplane.browser;

import static org.junit.jupiter.api.Assertions.assertTrue;

import com.sun.net.httpserver.HttpServer;
import dev.fillplane.web.Access;
import dev.fillplane.web.Server;
import dev.fillplane.web.Settings;
import java.io.IOException;
import java.net.InetAddress;
import java.net.InetSocketAddress;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.openqa.selenium.WebElement;

/** The page of the worked integration, on a server of its own, as its document shows it. */
class SupplierPageIT {

  private static final Path DOCUMENT = Path.of("..", "docs", "integrations", "supplier-page.md");
  private static final String SERVICE = "http://127.0.0.1:8080";

  private static Browser browser;
  private static HttpServer shop;
  private static Server server;
  private static String origin;
  private static String page = "";

  @BeforeAll
  static void start() throws IOException {
    browser = Browser.start();
    shop = HttpServer.create(new InetSocketAddress(InetAddress.getLoopbackAddress(), 0), 0);
    shop.createContext(
        "/",
        exchange -> {
          byte[] content = page.getBytes(StandardCharsets.UTF_8);
          exchange.getResponseHeaders().add("Content-Type", "text/html; charset=utf-8");
          exchange.sendResponseHeaders(200, content.length);
          exchange.getResponseBody().write(content);
          exchange.close();
        });
    shop.start();
    origin = "http://127.0.0.1:" + shop.getAddress().getPort();
    Access access = Access.local().withOrigins(List.of(origin));
    server = Server.start(Settings.at("127.0.0.1", 0).withAccess(access));
    page = document().replace(SERVICE, "http://127.0.0.1:" + server.port());
  }

  @AfterAll
  static void stop() {
    if (browser != null) {
      browser.close();
    }
    if (server != null) {
      server.close();
      shop.stop(0);
    }
  }

  private static String document() throws IOException {
    Matcher block =
        Pattern.compile("```html\n(.*?)```", Pattern.DOTALL).matcher(Files.readString(DOCUMENT));
    assertTrue(block.find() && block.group(1).contains(SERVICE));
    return block.group(1);
  }

  /** 40 m2 of 4 to 8 mm are 240 L, and a bag yields 15 L: 16 bags and what is lost. */
  @Test
  void countsBags() {
    browser.open(origin + "/", Browser.DESK);
    browser.find("button").click();
    browser.says("#answer", " bags, ");
    String told = browser.text("#answer");
    int bags = Integer.parseInt(told.substring(0, told.indexOf(' ')));
    assertTrue(bags > 16 && bags < 40, told);
    assertTrue(told.contains((5 * bags) + " L of water"), told);
    askedNobodyElse();
  }

  @Test
  void tellsWhatIsWrong() {
    browser.open(origin + "/", Browser.PHONE);
    WebElement to = browser.find("input[name=to]");
    to.clear();
    to.sendKeys("2,5");
    browser.find("button").click();
    browser.until(
        () -> browser.text("#answer").length() > 10, () -> "it says: " + browser.text("#answer"));
    assertTrue(browser.text("#answer").endsWith("."), browser.text("#answer"));
    assertTrue(!browser.text("#answer").contains("reached"), browser.text("#answer"));
    askedNobodyElse();
  }

  /** The same page elsewhere, at an origin that the service was not told. */
  @Test
  void aPageThatIsNotKnownIsNotAnswered() {
    browser.open(origin.replace("127.0.0.1", "localhost") + "/", Browser.DESK);
    browser.find("button").click();
    browser.says("#answer", "cannot be reached");
    askedNobodyElse();
  }

  private static void askedNobodyElse() {
    int port = shop.getAddress().getPort();
    browser.askedOnly("127.0.0.1:" + server.port(), "127.0.0.1:" + port, "localhost:" + port);
  }
}
