package dev.fillplane.web;

import static org.junit.jupiter.api.Assertions.assertFalse;

import com.atlassian.oai.validator.OpenApiInteractionValidator;
import com.atlassian.oai.validator.report.LevelResolver;
import com.atlassian.oai.validator.report.ValidationReport;
import com.atlassian.oai.validator.restassured.OpenApiValidationFilter;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import dev.fillplane.job.JobSettings;
import dev.fillplane.job.StoreAddress;
import dev.fillplane.openapi.Contract;
import io.restassured.RestAssured;
import io.restassured.response.Response;
import io.restassured.specification.RequestSpecification;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.net.URI;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.concurrent.locks.LockSupport;
import java.util.function.BooleanSupplier;

/** One service for all tests of a run; every answer is held against the contract. */
public final class RunningService {

  public static final Contract CONTRACT = Contract.load();

  private static final Server SERVER = Server.start(settings());
  private static final OpenApiValidationFilter ANSWERS = answers();

  private RunningService() {}

  /** Waits for what must come; the time of the test bounds it. */
  static void until(BooleanSupplier holds) {
    while (!holds.getAsBoolean()) {
      assertFalse(Thread.currentThread().isInterrupted(), "it does not happen");
      LockSupport.parkNanos(1_000_000);
    }
  }

  /** Jobs are kept in a folder of the run. */
  private static Settings settings() {
    try {
      Path folder = Files.createTempDirectory("fillplane-data");
      folder.toFile().deleteOnExit();
      return Settings.at("127.0.0.1", 0).withJobs(JobSettings.in(StoreAddress.folder(folder)));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  public static URI uri() {
    return URI.create("http://127.0.0.1:" + SERVER.port());
  }

  /** A request whose answer must fit the contract, whatever was asked. */
  static RequestSpecification given() {
    return open().filter(ANSWERS);
  }

  /** The same to a server of its own settings. */
  static RequestSpecification given(Server server) {
    return to(server).filter(ANSWERS);
  }

  /** A request that nothing is held against. */
  static RequestSpecification open() {
    return to(SERVER);
  }

  /** A request to a server of its own settings. */
  static RequestSpecification to(Server server) {
    return RestAssured.given().baseUri("http://127.0.0.1:" + server.port());
  }

  static Response post(String path, Object body) {
    return given().contentType("application/json").body(body.toString()).post(path);
  }

  /** An example of the contract, to be changed by a test. */
  static ObjectNode example(String name) {
    JsonNode example = CONTRACT.example(name);
    return (ObjectNode) example;
  }

  static ObjectNode sample() {
    return example("sample-metric.json");
  }

  /** Holds answers against the contract, not requests, so that bad ones can be sent. */
  private static OpenApiValidationFilter answers() {
    return new OpenApiValidationFilter(
        OpenApiInteractionValidator.createForInlineApiSpecification(CONTRACT.yaml())
            .withLevelResolver(
                LevelResolver.create()
                    .withLevel("validation.request", ValidationReport.Level.IGNORE)
                    .build())
            .build());
  }
}
