package dev.fillplane.client;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.fillplane.client.generated.ApiException;
import dev.fillplane.client.generated.api.HealthApi;
import java.io.IOException;
import java.net.URI;
import java.net.http.HttpTimeoutException;
import java.time.Duration;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;

/** The client against a stub on the loopback address. */
@Timeout(30)
class FillplaneClientTest {
  private static final String ALIVE = "{\"state\": \"up\"}";

  @Test
  void readsAnAnswer() {
    try (StubService service = StubService.answering(200, "application/json", ALIVE)) {
      FillplaneClient client = FillplaneClient.at(service.address()).build();
      assertEquals("up", state(client));
      assertEquals("/health/live", service.lastPath());
      assertNull(service.lastHeader("Authorization"));
      String agent = service.lastHeader("User-Agent");
      assertTrue(agent.matches("fillplane-java/\\d+\\.\\d+\\.\\d+.*"), agent);
    }
  }

  @Test
  void sendsTheKeyAndKeepsThePath() {
    try (StubService service = StubService.answering(200, "application/json", ALIVE)) {
      URI address = service.address().resolve("/fillplane/");
      state(FillplaneClient.at(address).apiKey("secret").build());
      assertEquals("Bearer secret", service.lastHeader("Authorization"));
      assertEquals("/fillplane/health/live", service.lastPath());
    }
  }

  @Test
  void turnsARefusalToAProblem() {
    String body =
        """
        {"type": "https://fillplane.example/problems/invalid", "title": "Not valid", "status": 422,
         "detail": "Two things are wrong.", "instance": "/requests/7", "more": 3,
         "errors": [{"code": "missing", "pointer": "#/rooms", "detail": "Rooms are missing."}]}
        """;
    ProblemException problem = problem(422, "application/problem+json", body);
    assertEquals(URI.create("https://fillplane.example/problems/invalid"), problem.type());
    assertEquals("Not valid", problem.title());
    assertEquals(422, problem.status());
    assertEquals(Optional.of("Two things are wrong."), problem.detail());
    assertEquals(Optional.of(URI.create("/requests/7")), problem.instance());
    assertEquals(
        List.of(new Problem("missing", "#/rooms", "Rooms are missing.")), problem.errors());
    assertEquals(3, problem.more());
    assertEquals(
        "Not valid (422): Two things are wrong.; #/rooms Rooms are missing.; and 3 more",
        problem.getMessage());
    assertInstanceOf(ApiException.class, problem.getCause());
  }

  @Test
  void turnsAnyOtherFailureToABlankProblem() {
    for (String body : List.of("<html>Bad gateway</html>", "", "[1]", "{\"type\": \": :\"}")) {
      ProblemException problem = problem(502, "text/html", body);
      assertEquals(URI.create("about:blank"), problem.type());
      assertEquals("HTTP status 502 (502)", problem.getMessage());
      assertEquals(List.of(), problem.errors());
      assertEquals(Optional.empty(), problem.detail());
    }
  }

  @Test
  void tellsWhenNothingListens() {
    URI address;
    try (StubService service = StubService.silent()) {
      address = service.address();
    }
    FillplaneClient client = FillplaneClient.at(address).retries(Retries.none()).build();
    var failure = assertThrows(NoAnswerException.class, () -> state(client));
    assertEquals("The service cannot be reached.", failure.getMessage());
    assertInstanceOf(IOException.class, failure.getCause());
  }

  @Test
  void tellsWhenTheAnswerIsLate() {
    try (StubService service = StubService.silent()) {
      FillplaneClient client =
          FillplaneClient.at(service.address()).readTimeout(Duration.ofMillis(50)).build();
      var failure = assertThrows(NoAnswerException.class, () -> state(client));
      assertEquals("The service did not answer in time.", failure.getMessage());
      assertInstanceOf(HttpTimeoutException.class, failure.getCause());
    }
  }

  @Test
  void tellsWhenTheAnswerCannotBeRead() {
    try (StubService service = StubService.answering(200, "application/json", "{\"state\": ")) {
      FillplaneClient client = FillplaneClient.at(service.address()).build();
      var failure = assertThrows(NoAnswerException.class, () -> state(client));
      assertEquals("The service's answer cannot be read.", failure.getMessage());
    }
  }

  @Test
  void runsWhatReturnsNothing() {
    try (StubService service = StubService.answering(404, "application/problem+json", "{}")) {
      FillplaneClient client = FillplaneClient.at(service.address()).build();
      HealthApi health = client.api(HealthApi::new);
      var problem =
          assertThrows(ProblemException.class, () -> client.run(() -> health.getLiveness()));
      assertEquals(404, problem.status());
    }
  }

  @Test
  void blamesTheCallerForAMissingArgument() {
    FillplaneClient client = FillplaneClient.at(URI.create("http://localhost")).build();
    FillplaneClient.Action incomplete =
        () -> {
          throw new ApiException(400, "Missing the required parameter 'id'");
        };
    assertThrows(IllegalArgumentException.class, () -> client.run(incomplete));
  }

  @Test
  void refusesWhatCannotWork() {
    for (String address : List.of("ftp://localhost", "/plans", "http:///plans", "http://a?b=c")) {
      assertThrows(
          IllegalArgumentException.class, () -> FillplaneClient.at(URI.create(address)), address);
    }
    ClientBuilder builder = FillplaneClient.at(URI.create("http://localhost"));
    assertThrows(IllegalArgumentException.class, () -> builder.apiKey(" "));
    assertThrows(IllegalArgumentException.class, () -> builder.readTimeout(Duration.ZERO));
    assertThrows(
        IllegalArgumentException.class, () -> builder.connectTimeout(Duration.ofSeconds(-1)));
  }

  private static String state(FillplaneClient client) {
    return client.call(client.api(HealthApi::new)::getLiveness).getState();
  }

  private static ProblemException problem(int status, String contentType, String body) {
    try (StubService service = StubService.answering(status, contentType, body)) {
      FillplaneClient client = FillplaneClient.at(service.address()).build();
      return assertThrows(ProblemException.class, () -> state(client));
    }
  }
}
