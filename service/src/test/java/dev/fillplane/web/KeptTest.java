package dev.fillplane.web;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.restassured.RestAssured;
import io.restassured.config.DecoderConfig;
import io.restassured.response.Response;
import io.restassured.specification.RequestSpecification;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Answers that callers keep: tags, and 304 where nothing changed. */
class KeptTest {

  @ParameterizedTest
  @ValueSource(
      strings = {
        "/v1/materials",
        "/v1/materials?units=us",
        "/v1/substrates",
        "/v1/coverings",
        "/v1/tolerances",
        "/v1/tolerances/din-18202-line-3?span=2",
        "/v1/methods",
        "/v1/capabilities",
        "/openapi.yaml"
      })
  void isToldOnceAndKept(String path) {
    Response first = plain().get(path);
    assertEquals(200, first.statusCode());
    String tag = first.header("ETag");
    assertTrue(tag.matches("\"[0-9a-f]{32}\""), tag);
    assertEquals("no-cache", first.header("Cache-Control"));
    dependsOnEncoding(first);
    for (String known : new String[] {tag, "\"other\", " + tag, "W/" + tag, "*"}) {
      Response again = plain().header("If-None-Match", known).get(path);
      assertEquals(304, again.statusCode(), known);
      assertEquals(tag, again.header("ETag"));
      assertEquals("no-cache", again.header("Cache-Control"));
      dependsOnEncoding(again);
      assertEquals(0, again.asByteArray().length);
    }
    Response other = plain().header("If-None-Match", "\"other\"").get(path);
    assertEquals(200, other.statusCode());
    assertEquals(first.asString(), other.asString());
  }

  @Test
  void unitsHaveTheirOwnTags() {
    assertNotEquals(
        plain().get("/v1/materials").header("ETag"),
        plain().get("/v1/materials?units=us").header("ETag"));
  }

  /** A tag names the bytes that were sent, so that of a packed answer is another. */
  @Test
  void packedAnswersHaveTheirOwnTags() {
    Response packed = packed().get("/v1/methods");
    assertEquals("gzip", packed.header("Content-Encoding"));
    assertTrue(packed.header("ETag").endsWith("-gzip\""), packed.header("ETag"));
    String plain = plain().get("/v1/methods").asString();
    assertEquals(plain, RunningService.given().get("/v1/methods").asString(), "unpacked");
    String tag = packed.header("ETag");
    assertEquals(304, packed().header("If-None-Match", tag).get("/v1/methods").statusCode());
    assertEquals(200, plain().header("If-None-Match", tag).get("/v1/methods").statusCode());
  }

  @ParameterizedTest
  @ValueSource(strings = {"identity", "gzip;q=0", "br", "gzip; q=0.0"})
  void packedOnlyForWhoTakesIt(String accept) {
    Response answer = accepting(RunningService.given(), accept).get("/v1/capabilities");
    assertNull(answer.header("Content-Encoding"), accept);
    assertTrue(answer.header("ETag").matches("\"[0-9a-f]{32}\""));
  }

  @Test
  void problemsAndPlansAreNotKept() {
    Response refused = plain().get("/v1/materials?units=imperial");
    assertEquals(400, refused.statusCode());
    assertNull(refused.header("ETag"));
    Response plan = RunningService.post("/v1/plans", RunningService.example("rectangle.json"));
    assertNull(plan.header("ETag"));
    dependsOnEncoding(plan);
    assertEquals("no-store", plain().get("/health/ready").header("Cache-Control"));
  }

  private static void dependsOnEncoding(Response answer) {
    List<String> told = answer.headers().getValues("Vary");
    assertTrue(told.contains("Accept-Encoding"), told.toString());
  }

  private static RequestSpecification plain() {
    return accepting(RunningService.given(), "identity");
  }

  /** Not held against the contract, since it is not unpacked. */
  private static RequestSpecification packed() {
    return accepting(RunningService.open(), "gzip");
  }

  /** Without decoders nothing is asked for on its own, nor unpacked. */
  private static RequestSpecification accepting(RequestSpecification request, String encoding) {
    return request
        .config(
            RestAssured.config().decoderConfig(DecoderConfig.decoderConfig().noContentDecoders()))
        .header("Accept-Encoding", encoding);
  }
}
