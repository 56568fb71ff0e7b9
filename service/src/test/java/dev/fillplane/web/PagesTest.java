package dev.fillplane.web;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.restassured.config.DecoderConfig;
import io.restassured.config.RestAssuredConfig;
import io.restassured.response.Response;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The files for people, without a browser. */
class PagesTest {

  private static final Path FOLDER = Path.of("src/main/resources/dev/fillplane/web/page");

  @Test
  void eachListedFileIsAnsweredWithItsTypeAndMayAskNobodyElse() {
    for (String line : Pages.list()) {
      Response answer = RunningService.open().get(line.split(" ", -1)[0]);
      assertEquals(200, answer.statusCode(), line);
      assertEquals("nosniff", answer.header("X-Content-Type-Options"), line);
      assertTrue(answer.header("Content-Security-Policy").startsWith("default-src 'self';"), line);
      assertFalse(answer.contentType().startsWith("text/plain"), line);
    }
  }

  @Test
  void everyFileOfTheFolderIsListed() throws IOException {
    TreeSet<String> there = new TreeSet<>();
    try (Stream<Path> files = Files.walk(FOLDER)) {
      files
          .filter(Files::isRegularFile)
          .forEach(file -> there.add(FOLDER.relativize(file).toString()));
    }
    there.remove("files.txt");
    List<String> listed =
        Pages.list().stream()
            .map(line -> line.split(" ", -1)[1])
            .filter(resource -> !resource.startsWith("/"))
            .sorted()
            .toList();
    assertEquals(listed, List.copyOf(there));
  }

  /** Behind a proxy the service may stand below a path: nothing of it starts at the host. */
  @Test
  void noFileAsksFromTheRootOfItsHost() throws IOException {
    Pattern absolute =
        Pattern.compile("(href=|src=|url:) ?[\"'`]/|[\"'`]/(v1|page|docs|elements|openapi)");
    for (String line : Pages.list()) {
      String resource = line.split(" ", -1)[1];
      if (!resource.startsWith("/")) {
        Matcher found = absolute.matcher(Files.readString(FOLDER.resolve(resource)));
        assertFalse(found.find(), () -> resource + ": " + found.group());
      }
    }
  }

  @ParameterizedTest
  @ValueSource(strings = {"/docs/", "/elements/bag-calculator.html/"})
  void aSlashTooManyIsLedToThePageWhoseLinksHold(String path) {
    Response answer = RunningService.open().redirects().follow(false).get(path);
    assertEquals(308, answer.statusCode());
    String[] names = path.split("/", -1);
    assertEquals("../" + names[names.length - 2], answer.header("Location"));
  }

  @Test
  void aKnownCopyIsNotSentAgain() {
    Response first = RunningService.open().get("/page/app.js");
    String tag = first.header("ETag");
    assertTrue(tag.matches("\"[0-9a-f]{32}-gzip\""), tag);
    Response again = RunningService.open().header("If-None-Match", tag).get("/page/app.js");
    assertEquals(304, again.statusCode());
    assertEquals(
        200,
        RunningService.open()
            .header("If-None-Match", "\"other\"")
            .get("/page/app.js")
            .statusCode());
  }

  @Test
  void packedAndPlainHaveTagsOfTheirOwn() {
    Response plain =
        RunningService.open()
            .config(
                RestAssuredConfig.config()
                    .decoderConfig(DecoderConfig.decoderConfig().noContentDecoders()))
            .get("/page/style.css");
    assertNull(plain.header("Content-Encoding"));
    Response packed = RunningService.open().get("/page/style.css");
    assertEquals(plain.header("ETag").replaceFirst("\"$", "-gzip\""), packed.header("ETag"));
    assertEquals(plain.asString(), packed.asString());
    assertEquals("Accept-Encoding", packed.header("Vary"));
  }

  @Test
  void onlyTheElementsAreForOtherPages() {
    assertEquals(
        "*",
        RunningService.open()
            .get("/elements/bag-calculator.js")
            .header("Access-Control-Allow-Origin"));
    for (String path : List.of("/", "/page/app.js", "/docs")) {
      assertNull(RunningService.open().get(path).header("Access-Control-Allow-Origin"), path);
    }
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "/page/",
        "/page/files.txt",
        "/page/none.js",
        "/page/..%2f..%2fsentences.properties",
        "/page/%2e%2e/sentences.properties",
        "/page//index.html",
        "/docs/index.html",
        "/elements/../../web/sentences.properties"
      })
  void whatIsNotListedIsNotThere(String path) {
    Response answer = RunningService.open().urlEncodingEnabled(false).get(path);
    assertTrue(List.of(400, 404).contains(answer.statusCode()), path + answer.statusCode());
    assertTrue(answer.contentType().startsWith("application/problem+json"), answer.contentType());
  }

  @Test
  void theSampleIsTheExampleOfTheContract() {
    assertEquals(
        RunningService.CONTRACT.example("sample-us.json").get("reference").textValue(),
        RunningService.open().get("/page/sample-us.json").path("reference"));
  }
}
