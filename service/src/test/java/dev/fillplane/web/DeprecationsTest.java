package dev.fillplane.web;

import static org.junit.jupiter.api.Assertions.assertDoesNotThrow;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertThrows;

import com.fasterxml.jackson.databind.JsonNode;
import io.javalin.Javalin;
import io.restassured.RestAssured;
import io.restassured.response.Response;
import io.restassured.specification.RequestSpecification;
import java.time.format.DateTimeParseException;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

/** A contract of its own, in which things are deprecated. */
class DeprecationsTest {

  private static final JsonNode CONTRACT =
      Refusals.tree(
          """
          {'paths': {
            '/old/{id}': {
              'get': {'deprecated': true, 'x-deprecated-at': '2027-01-31', 'x-sunset': '2027-08-01'},
              'post': {}},
            '/new': {
              'get': {'parameters': [{'$ref': '#/components/parameters/Span'}]},
              'post': {'requestBody': {'content': {'application/json': {'schema':
                {'$ref': '#/components/schemas/Wish'}}}}}}},
           'components': {
            'parameters': {'Span': {'name': 'span', 'in': 'query',
              'deprecated': true, 'x-deprecated-at': '2027-03-01'}},
            'schemas': {
              'Wish': {'properties': {
                'rooms': {'items': {'$ref': '#/components/schemas/Room'}},
                'crew': {'$ref': '#/components/schemas/Crew'}}},
              'Room': {'properties': {
                'id': {},
                'built': {'deprecated': true, 'x-deprecated-at': '2027-02-01', 'x-sunset': '2028-01-07'},
                'within': {'$ref': '#/components/schemas/Room'}}},
              'Crew': {'properties': {
                'built': {},
                'dogs': {'deprecated': true, 'x-deprecated-at': '2027-01-01', 'x-sunset': '2028-06-01'}}}}}}
          """);

  private static Javalin server;

  @BeforeAll
  static void start() {
    server =
        Javalin.create(
            config -> {
              config.startup.showJavalinBanner = false;
              new Deprecations(CONTRACT).handle(config);
              config.routes.get("/old/{id}", context -> context.result("old"));
              config.routes.post("/old/{id}", context -> context.result("posted"));
              config.routes.get("/new", context -> context.result("new"));
              config.routes.post("/new", context -> context.result(context.body()));
            });
    server.start("127.0.0.1", 0);
  }

  @AfterAll
  static void stop() {
    server.stop();
  }

  @Test
  void operation() {
    Response answer = given().get("/old/7");
    // 2027-01-31T00:00:00Z, by date -u -d 2027-01-31 +%s
    assertEquals("@1801353600", answer.header("Deprecation"));
    assertEquals("Sun, 01 Aug 2027 00:00:00 GMT", answer.header("Sunset"));
    assertEquals(
        "</openapi.yaml>; rel=\"deprecation\"; type=\"application/yaml\"", answer.header("Link"));
    silent(given().post("/old/7"));
  }

  @Test
  void parameter() {
    silent(given().get("/new"));
    Response answer = given().get("/new?span=2");
    assertEquals("@1803859200", answer.header("Deprecation"));
    assertNull(answer.header("Sunset"));
  }

  @Test
  void property() {
    silent(post("{'rooms':[{'id':'a'}],'crew':{'built':1}}"));
    silent(post("{'built':1,'dogs':2}"));
    silent(post("{'rooms':[{'built'"));
    Response deep = post("{'rooms':[{'id':'a'},{'within':{'built':1}}]}");
    silent(deep);
    Response room = post("{'rooms':[{'id':'a'},{'built':1900}]}");
    assertEquals("@1801440000", room.header("Deprecation"));
    assertEquals("Fri, 07 Jan 2028 00:00:00 GMT", room.header("Sunset"));
  }

  /** The earliest of each counts. */
  @Test
  void several() {
    Response both = post("{'crew':{'dogs':1},'rooms':[{'built':1900}]}");
    assertEquals("@1798761600", both.header("Deprecation"));
    assertEquals("Fri, 07 Jan 2028 00:00:00 GMT", both.header("Sunset"));
    assertEquals("{\"crew\":{\"dogs\":1},\"rooms\":[{\"built\":1900}]}", both.asString());
  }

  @Test
  void marksMustTellWhen() {
    assertThrows(DateTimeParseException.class, () -> mark("{'deprecated':true}"));
    assertThrows(
        IllegalArgumentException.class,
        () -> mark("{'deprecated':true,'x-deprecated-at':'2027-02-01','x-sunset':'2027-01-01'}"));
    assertDoesNotThrow(() -> mark("{'deprecated':false}"));
  }

  private static void mark(String node) {
    Deprecations.Mark.of(Refusals.tree(node));
  }

  /** Now that the service starts with its contract, each mark of it is whole. */
  @Test
  void nothingOfTheRunningServiceIsDeprecated() {
    silent(RunningService.given().get("/v1/materials"));
    silent(RunningService.post("/v1/plans", RunningService.example("rectangle.json")));
  }

  private static Response post(String body) {
    return given().contentType("application/json").body(body.replace('\'', '"')).post("/new");
  }

  private static RequestSpecification given() {
    return RestAssured.given().baseUri("http://127.0.0.1:" + server.port());
  }

  private static void silent(Response answer) {
    assertEquals(200, answer.statusCode());
    assertNull(answer.header("Deprecation"));
    assertNull(answer.header("Sunset"));
    assertNull(answer.header("Link"));
  }
}
