package dev.fillplane.web;

import io.javalin.http.Context;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.Future;
import java.util.concurrent.ScheduledExecutorService;
import java.util.concurrent.TimeUnit;
import org.eclipse.jetty.ee10.servlet.HttpOutput;
import org.eclipse.jetty.io.EndPoint;
import org.eclipse.jetty.util.Callback;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;

/**
 * Sends answers without a thread that waits for a caller who takes them slowly; one who is slower
 * than a bad line of a phone is cut off. Safe to share.
 */
final class Sending {

  private static final Logger LOG = LoggerFactory.getLogger(Sending.class);

  private final Pace pace;
  private final ScheduledExecutorService watch;

  Sending(Pace pace, ScheduledExecutorService watch) {
    this.pace = pace;
    this.watch = watch;
  }

  /** Sends {@code answer}; done when it is on its way in whole, or the caller is gone. */
  CompletableFuture<Void> send(Context context, String type, byte[] answer) {
    boolean pack = answer.length >= Packing.LEAST_BYTES && Packing.wanted(context);
    if (pack) {
      context.header("Content-Encoding", Packing.GZIP);
    }
    context.contentType(type);
    return send(context, pack ? Packing.fast(answer) : answer);
  }

  private CompletableFuture<Void> send(Context context, byte[] bytes) {
    CompletableFuture<Void> end = new CompletableFuture<>();
    context.res().setContentLength(bytes.length);
    try {
      HttpOutput out = (HttpOutput) context.res().getOutputStream();
      out.sendContent(
          ByteBuffer.wrap(bytes),
          Callback.from(() -> end.complete(null), failure -> gone(context, end, failure)));
    } catch (IOException e) {
      gone(context, end, e);
    }
    if (!end.isDone()) {
      cutLater(context, bytes.length, end);
    }
    return end;
  }

  private void cutLater(Context context, int bytes, CompletableFuture<Void> end) {
    EndPoint connection = Connections.of(context);
    long allowed = pace.answer(bytes).toMillis();
    Future<?> cut = watch.schedule(() -> connection.close(), allowed, TimeUnit.MILLISECONDS);
    end.whenComplete((sent, failure) -> cut.cancel(false));
  }

  private static void gone(Context context, CompletableFuture<Void> end, Throwable failure) {
    LOG.debug("the caller of request {} is gone", RequestIds.of(context), failure);
    end.complete(null);
  }
}
