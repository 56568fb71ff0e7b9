package dev.fillplane.web;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.fillplane.web.key.KeyBook;
import dev.fillplane.web.key.KeyFile;
import io.restassured.response.Response;
import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Nobody is in who was not let in. */
class AccessTest {

  @ParameterizedTest
  @ValueSource(strings = {"127.0.0.1", "127.1.2.3", "localhost", "::1"})
  void listensOnItsMachineWithoutKeys(String host) {
    Access.local().check(host);
  }

  @ParameterizedTest
  @ValueSource(strings = {"0.0.0.0", "::", "10.0.0.1", "9.9.9.9", "no.such.host.invalid"})
  void refusesToListenElsewhereWithoutKeys(String host) {
    Settings settings = Settings.at(host, 0);
    assertThrows(IllegalArgumentException.class, () -> Server.start(settings));
  }

  @Test
  void listensElsewhereWithKeysOrWhereThatIsMeant(@TempDir Path folder) throws IOException {
    Path file = folder.resolve("keys.json");
    KeyFile.write(file, List.of());
    Access.withKeys(KeyBook.open(file, text -> {})).check("0.0.0.0");
    Access.withoutKeys().check("0.0.0.0");
    assertThrows(IllegalArgumentException.class, () -> Access.local().check("0.0.0.0"));
  }

  /** A page whose name was made to lead to this machine still calls it by that name. */
  @Test
  void localServiceAnswersToItsOwnNamesOnly() {
    for (String name : List.of("localhost", "127.0.0.1:8080", "LOCALHOST:1", "[::1]:8080")) {
      assertEquals(200, called(name).statusCode(), name);
    }
    for (String name :
        List.of("rebound.example", "localhost.example:80", "10.0.0.1", "a_b", "::1")) {
      Response answer = called(name);
      assertEquals(403, answer.statusCode(), name);
      assertEquals("urn:fillplane:problem:forbidden", answer.path("type"));
    }
  }

  @Test
  void openServiceAnswersToAnyName() {
    Settings settings = Settings.at("127.0.0.1", 0).withAccess(Access.withoutKeys());
    try (Server server = Server.start(settings)) {
      Response answer =
          RunningService.to(server).header("Host", "plans.example").get("/v1/methods");
      assertEquals(200, answer.statusCode());
      assertTrue(answer.asString().contains("items"));
    }
  }

  private static Response called(String name) {
    return RunningService.open().header("Host", name).get("/v1/methods");
  }
}
