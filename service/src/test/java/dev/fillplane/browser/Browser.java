package dev.fillplane.browser;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.List;
import java.util.Map;
import java.util.TreeSet;
import java.util.function.Supplier;
import java.util.logging.Level;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.openqa.selenium.By;
import org.openqa.selenium.StaleElementReferenceException;
import org.openqa.selenium.WebElement;
import org.openqa.selenium.chrome.ChromeDriver;
import org.openqa.selenium.chrome.ChromeDriverService;
import org.openqa.selenium.chrome.ChromeOptions;
import org.openqa.selenium.logging.LogEntry;
import org.openqa.selenium.logging.LogType;
import org.openqa.selenium.logging.LoggingPreferences;
import org.openqa.selenium.support.ui.WebDriverWait;

/** Chromium as Debian packages it, without a window; tests that want it are skipped without it. */
final class Browser implements AutoCloseable {

  static final int DESK = 1280;
  static final int PHONE = 360;

  private static final Path CHROMIUM = Path.of("/usr/bin/chromium");
  private static final Path DRIVER = Path.of("/usr/bin/chromedriver");
  private static final Duration PATIENCE = Duration.ofSeconds(60);
  private static final Pattern ASKED = Pattern.compile("\"url\":\"(https?|wss?)://([^/\"]+)");

  private final ChromeDriver driver;
  private final Path downloads;
  private final WebDriverWait wait;

  private Browser(ChromeDriver driver, Path downloads) {
    this.driver = driver;
    this.downloads = downloads;
    this.wait = new WebDriverWait(driver, PATIENCE);
    wait.ignoring(StaleElementReferenceException.class);
  }

  /** A new browser with a profile of its own. */
  static Browser start() {
    assumeTrue(
        Files.exists(CHROMIUM) && Files.exists(DRIVER),
        "No browser tests: apt-get install chromium chromium-driver to run them.");
    ChromeOptions options = new ChromeOptions();
    options.setBinary(CHROMIUM.toString());
    options.addArguments(
        "--headless=new",
        "--no-sandbox",
        "--disable-gpu",
        "--disable-dev-shm-usage",
        "--disable-quic",
        "--no-first-run",
        "--disable-background-networking",
        "--disable-component-update",
        "--disable-sync",
        "--force-prefers-reduced-motion",
        "--window-size=1280,900",
        "--user-data-dir=" + folder());
    Path downloads = folder();
    options.setExperimentalOption(
        "prefs", Map.of("download.default_directory", downloads.toString()));
    LoggingPreferences logs = new LoggingPreferences();
    logs.enable(LogType.PERFORMANCE, Level.ALL);
    options.setCapability("goog:loggingPrefs", logs);
    ChromeDriverService service =
        new ChromeDriverService.Builder().usingDriverExecutable(DRIVER.toFile()).build();
    return new Browser(new ChromeDriver(service, options), downloads);
  }

  private static Path folder() {
    try {
      return Files.createTempDirectory("fillplane-browser");
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** Opens an address in a window of that width; what was asked before is forgotten. */
  Browser open(String address, int width) {
    command(
        "Emulation.setDeviceMetricsOverride",
        Map.of("width", width, "height", 800, "deviceScaleFactor", 1, "mobile", false));
    driver.manage().logs().get(LogType.PERFORMANCE);
    driver.get(address);
    return this;
  }

  void command(String name, Map<String, Object> parameters) {
    driver.executeCdpCommand(name, parameters);
  }

  WebElement find(String selector) {
    return driver.findElement(By.cssSelector(selector));
  }

  List<WebElement> all(String selector) {
    return driver.findElements(By.cssSelector(selector));
  }

  WebElement focused() {
    return driver.switchTo().activeElement();
  }

  Object run(String script, Object... arguments) {
    return driver.executeScript(script, arguments);
  }

  String text(String selector) {
    return find(selector).getText();
  }

  /** Waits until the element says the text. */
  void says(String selector, String text) {
    until(() -> text(selector).contains(text), () -> selector + " says: " + text(selector));
  }

  /** An element inside of another one that is closed to style sheets. */
  WebElement inside(String host, String selector) {
    return find(host).getShadowRoot().findElement(By.cssSelector(selector));
  }

  /** Waits until a calculator says the text. */
  void counts(String calculator, String text) {
    until(
        () -> inside(calculator, "#result").getText().contains(text),
        () -> calculator + " says: " + inside(calculator, "#result").getText());
  }

  boolean scrollsSideways() {
    return (Boolean)
        run("return document.documentElement.scrollWidth > document.documentElement.clientWidth");
  }

  void until(Supplier<Boolean> condition, Supplier<String> otherwise) {
    try {
      wait.until(unused -> condition.get());
    } catch (org.openqa.selenium.TimeoutException e) {
      throw new AssertionError(otherwise.get(), e);
    }
  }

  /** A file that the page saves, when it is there whole. */
  Path saved(String name) {
    Path file = downloads.resolve(name);
    until(() -> Files.exists(file) && file.toFile().length() > 0, () -> name + " is not saved");
    return file;
  }

  /** Every request since the page was opened went to these hosts only. */
  void askedOnly(String... hosts) {
    TreeSet<String> foreign = new TreeSet<>();
    int asked = 0;
    for (LogEntry entry : driver.manage().logs().get(LogType.PERFORMANCE)) {
      if (entry.getMessage().contains("\"Network.requestWillBeSent\"")) {
        Matcher url = ASKED.matcher(entry.getMessage());
        while (url.find()) {
          foreign.add(url.group(2));
          asked++;
        }
      }
    }
    foreign.removeAll(List.of(hosts));
    assertEquals("[]", foreign.toString());
    assertEquals(true, asked > 0, "the log of requests is empty");
  }

  /** Axe-core finds nothing serious or critical on the page as it is. */
  void accessible() {
    run(axe());
    Object found =
        driver.executeAsyncScript(
            """
            const done = arguments[arguments.length - 1];
            axe.run(document).then((result) => done(result.violations
              .filter(({ impact }) => ['serious', 'critical'].includes(impact))
              .map(({ id, nodes }) => id + ': ' + nodes.map(({ html }) => html.slice(0, 160)).join(' | '))
              .join('\\n')));
            """);
    assertEquals("", found);
  }

  private static String axe() {
    try (var in = Browser.class.getResourceAsStream("/axe.min.js")) {
      return new String(in.readAllBytes(), StandardCharsets.UTF_8);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  @Override
  public void close() {
    driver.quit();
  }
}
