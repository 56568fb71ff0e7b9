package dev.fillplane.client;

import dev.fillplane.client.generated.ApiClient;
import dev.fillplane.client.generated.ApiException;
import dev.fillplane.client.generated.model.JobRequest;
import dev.fillplane.client.generated.model.PlanRequest;
import java.io.IOException;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.time.Duration;
import java.util.Iterator;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;

/**
 * A service at one address, with the key and the timeouts to call it with.
 *
 * <p>Immutable and safe for use by many threads; keep one, it holds the connections.
 */
public final class FillplaneClient {
  private final String baseUri;
  private final Optional<String> apiKey;
  private final Duration readTimeout;
  private final Sockets sockets;
  private final Time time;
  private final Attempts attempts;
  private final IdempotencyKeys keys = new IdempotencyKeys();
  private final HttpClient http;

  FillplaneClient(ClientBuilder builder) {
    baseUri = builder.baseUri;
    apiKey = builder.apiKey;
    sockets = new Sockets(builder.connectTimeout, builder.readTimeout, builder.sslContext);
    readTimeout = builder.readTimeout;
    time = builder.time;
    attempts = new Attempts(builder.retries, time, builder.jitter);
    HttpClient.Builder connections = ApiClient.createDefaultHttpClientBuilder();
    builder.sslContext.ifPresent(connections::sslContext);
    http = connections.connectTimeout(builder.connectTimeout).build();
  }

  /**
   * Starts a client of the service at an address such as {@code https://plans.example/fillplane}.
   *
   * @throws IllegalArgumentException if the address is not an absolute http or https address
   */
  public static ClientBuilder at(URI baseUri) {
    return new ClientBuilder(baseUri);
  }

  /**
   * Makes one of the generated groups of operations, such as {@code client.api(HealthApi::new)}.
   * Each is safe for use by many threads.
   */
  public <T> T api(Function<ApiClient, T> constructor) {
    ApiClient configured = new SharedConnections(http, baseUri);
    configured.setReadTimeout(readTimeout);
    configured.setRequestInterceptor(this::prepare);
    return constructor.apply(configured);
  }

  /**
   * Runs an operation that returns something, such as {@code client.call(health::getLiveness)};
   * again where that is safe, as {@link Retries} says.
   *
   * @throws ProblemException if the service refuses or fails
   * @throws NoAnswerException if there is no answer, or none that can be read
   * @throws IllegalArgumentException if a required argument of the operation is missing
   */
  public <T> T call(Call<T> operation) {
    return keys.during(() -> attempts.run(() -> attempt(operation)));
  }

  /** Runs an operation that returns nothing; fails as {@link #call} does. */
  public void run(Action operation) {
    call(
        () -> {
          operation.run();
          return null;
        });
  }

  /** Runs an operation a single time, for what must not be done twice; fails as {@link #call}. */
  void once(Action operation) {
    attempt(
        () -> {
          operation.run();
          return null;
        });
  }

  /**
   * Plans many units in one exchange, each answered in its turn while later ones are still sent.
   *
   * @param requests asked for the next one by a thread of the stream, as fast as the service works
   */
  public PlanStream streamPlans(Iterator<PlanRequest> requests) {
    return new PlanStream(requests, this::openStream, attempts.series(), time);
  }

  /**
   * Starts a job of many units, with an {@code Idempotency-Key}: however often it is asked for, it
   * is one job.
   */
  public RunningJob startJob(JobRequest request) {
    return RunningJob.start(this, time, request);
  }

  /** A job that was started before, by its id. */
  public RunningJob job(String id) {
    return RunningJob.of(this, time, id);
  }

  private LineExchange openStream(LineExchange.Lines lines) throws IOException {
    URI address = URI.create(baseUri + "/v1/plan-streams");
    return LineExchange.open(sockets, address, identity(), lines);
  }

  private <T> T attempt(Call<T> operation) {
    try {
      return operation.run();
    } catch (ApiException e) {
      throw Failures.of(e, time.now());
    }
  }

  private void prepare(HttpRequest.Builder request) {
    identity().forEach(request::setHeader);
    keys.addTo(request, URI.create(baseUri).getPath());
  }

  private Map<String, String> identity() {
    Map<String, String> headers = new LinkedHashMap<>();
    headers.put("User-Agent", "fillplane-java/" + ClientVersion.VALUE);
    apiKey.ifPresent(key -> headers.put("Authorization", "Bearer " + key));
    return headers;
  }

  /** An operation of a generated class that returns something. */
  @FunctionalInterface
  public interface Call<T> {
    /** Runs the operation. */
    T run() throws ApiException;
  }

  /** An operation of a generated class that returns nothing. */
  @FunctionalInterface
  public interface Action {
    /** Runs the operation. */
    void run() throws ApiException;
  }
}
