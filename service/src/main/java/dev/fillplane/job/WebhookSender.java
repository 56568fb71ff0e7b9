package dev.fillplane.job;

import dev.fillplane.trace.Trace;
import java.net.InetAddress;
import java.net.URI;
import java.net.UnknownHostException;
import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.TimeoutException;
import java.util.stream.Collectors;
import javax.net.ssl.SSLException;
import org.eclipse.jetty.client.BufferingResponseListener;
import org.eclipse.jetty.client.BytesRequestContent;
import org.eclipse.jetty.client.HttpClient;
import org.eclipse.jetty.client.Request;
import org.eclipse.jetty.client.Response;
import org.eclipse.jetty.client.Result;
import org.eclipse.jetty.http.HttpCookieStore;
import org.eclipse.jetty.http.HttpFields;
import org.eclipse.jetty.http.HttpHeader;
import org.eclipse.jetty.http.HttpMethod;
import org.eclipse.jetty.util.thread.QueuedThreadPool;

/**
 * Sends messages to receivers as Standard Webhooks 1.0.0 says: signed, with a time limit for the
 * whole of it, without following redirects, and only to addresses that are allowed. Of the answer
 * only the status counts; no more than a few kB of it are read. Safe to share.
 */
public final class WebhookSender implements AutoCloseable {

  /** How long an attempt may take in whole, from finding the address to the status. */
  static final Duration PATIENCE = Duration.ofSeconds(15);

  private static final int ANSWER_BYTES = 4096;
  private static final int THREADS = 16;
  private static final Duration LINGER = Duration.ofMinutes(1);

  private final HttpClient http;
  private final WebhookTargets targets;
  private final Duration patience;

  private WebhookSender(HttpClient http, WebhookTargets targets, Duration patience) {
    this.http = http;
    this.targets = targets;
    this.patience = patience;
  }

  /** A sender to {@code targets}. */
  public static WebhookSender start(WebhookTargets targets) {
    return start(targets, InetAddress::getAllByName, PATIENCE);
  }

  /** The same with names and a patience of its own. */
  static WebhookSender start(
      WebhookTargets targets, CheckedResolver.Names names, Duration patience) {
    QueuedThreadPool threads = new QueuedThreadPool(THREADS);
    threads.setName("webhooks");
    threads.setDaemon(true);
    HttpClient http = new HttpClient();
    http.setExecutor(threads);
    http.setSocketAddressResolver(new CheckedResolver(names, targets, threads));
    http.setConnectTimeout(patience.toMillis());
    http.setFollowRedirects(false);
    http.setHttpCookieStore(new HttpCookieStore.Empty());
    http.setMaxResponseHeadersSize(ANSWER_BYTES);
    http.setDestinationIdleTimeout(LINGER.toMillis());
    try {
      http.start();
    } catch (Exception e) {
      throw new IllegalStateException("the sender of webhooks does not start", e);
    }
    return new WebhookSender(http, targets, patience);
  }

  /** Tries to deliver {@code message} to {@code url} at {@code now}, signed with all secrets. */
  public Delivery send(URI url, WebhookMessage message, List<WebhookSecret> secrets, Instant now) {
    if (!targets.allowsScheme(url)) {
      return Delivery.failed("the address is not https");
    }
    CompletableFuture<Delivery> end = new CompletableFuture<>();
    request(url, message, secrets, now)
        .onResponseHeaders(response -> end.complete(answered(response)))
        .send(
            new BufferingResponseListener(ANSWER_BYTES) {
              @Override
              public void onComplete(Result result) {
                if (result.isFailed()) {
                  end.completeExceptionally(result.getFailure());
                }
              }
            });
    try {
      return end.get(2 * patience.toMillis(), TimeUnit.MILLISECONDS);
    } catch (ExecutionException e) {
      return Delivery.failed(why(e.getCause()));
    } catch (TimeoutException e) {
      return Delivery.failed("no end of the attempt");
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
      return Delivery.failed("the service is stopping");
    }
  }

  private Request request(
      URI url, WebhookMessage message, List<WebhookSecret> secrets, Instant now) {
    long seconds = now.getEpochSecond();
    byte[] body = message.body();
    String signatures =
        secrets.stream()
            .map(secret -> secret.sign(message.id(), seconds, body))
            .collect(Collectors.joining(" "));
    return http.newRequest(url)
        .method(HttpMethod.POST)
        .agent("fillplane-webhooks")
        .headers(
            headers -> {
              headers
                  .put("webhook-id", message.id())
                  .put("webhook-timestamp", seconds)
                  .put("webhook-signature", signatures)
                  .put(HttpHeader.CONNECTION, "close");
              message.trace().ifPresent(trace -> follow(headers, trace));
            })
        .body(new BytesRequestContent("application/json", body))
        .timeout(patience.toMillis(), TimeUnit.MILLISECONDS);
  }

  private static void follow(HttpFields.Mutable headers, Trace trace) {
    headers.put(Trace.PARENT, trace.next().parent());
    trace.state().ifPresent(state -> headers.put(Trace.STATE, state));
  }

  private static Delivery answered(Response response) {
    String wait = response.getHeaders().get(HttpHeader.RETRY_AFTER);
    boolean seconds = wait != null && wait.matches("\\d{1,9}");
    return Delivery.answered(
        response.getStatus(),
        seconds ? Optional.of(Duration.ofSeconds(Long.parseLong(wait))) : Optional.empty());
  }

  /** Told in our own words: those of a failure may hold what a receiver wrote. */
  private static String why(Throwable failure) {
    if (failure instanceof CheckedResolver.ForbiddenAddress) {
      return failure.getMessage();
    } else if (failure instanceof TimeoutException) {
      return "no answer in time";
    } else if (failure instanceof UnknownHostException) {
      return "the name is not known";
    } else if (failure instanceof SSLException) {
      return "no secure connection";
    }
    return "no connection, or no proper answer";
  }

  /** Ends what is under way. */
  @Override
  public void close() {
    try {
      http.stop();
    } catch (Exception e) {
      throw new IllegalStateException("the sender of webhooks does not stop", e);
    }
  }
}
