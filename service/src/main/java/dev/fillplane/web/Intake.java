package dev.fillplane.web;

import io.javalin.http.Context;
import java.util.concurrent.CompletableFuture;
import java.util.function.Function;
import java.util.function.Supplier;
import org.eclipse.jetty.io.EndPoint;

/**
 * Takes the body of a request to its answer. Light work is done by the thread of the request; heavy
 * work in a place of the {@link Lane}. No thread waits for a body, for a place, or for a caller who
 * reads slowly. Safe to share.
 */
final class Intake {

  /** A body above this is heavy whatever is asked: reading it alone takes a while. */
  static final int LIGHT_BYTES = 100_000;

  private static final long NEVER = 0;

  private final Bodies bodies;
  private final Lane lane;
  private final Sending sending;

  Intake(Bodies bodies, Lane lane, Sending sending) {
    this.bodies = bodies;
    this.lane = lane;
    this.sending = sending;
  }

  /** Answers with {@code type} what {@code work} makes of a JSON body in a place. */
  void answer(Context context, String type, Function<byte[], byte[]> work) {
    answer(context, Calculation.JSON, type, work);
  }

  /** The same for a body of the media type {@code wanted}. */
  void answer(Context context, String wanted, String type, Function<byte[], byte[]> work) {
    Body.check(context, wanted);
    Bodies.Arriving body = bodies.begin(context);
    context.future(
        () ->
            compute(context, body, work)
                .thenCompose(answer -> sending.send(context, type, answer)));
  }

  /** The same for work that is light, as long as its body is. */
  void answerLight(Context context, String type, Function<byte[], byte[]> work) {
    Body.check(context, Calculation.JSON);
    Bodies.Arriving body = bodies.begin(context);
    if (body.reading().arrived() && body.reading().count() <= LIGHT_BYTES) {
      context.contentType(type).result(work.apply(body.reading().whole().join()));
      return;
    }
    context.future(
        () ->
            bodies
                .rest(body.reading())
                .thenCompose(
                    bytes ->
                        bytes.length <= LIGHT_BYTES
                            ? CompletableFuture.completedFuture(work.apply(bytes))
                            : inLane(context, body, bytes, work))
                .thenCompose(answer -> sending.send(context, type, answer)));
  }

  /** Answers a request without a body with the JSON that {@code work} makes in a place. */
  void answer(Context context, Supplier<byte[]> work) {
    context.future(
        () ->
            lane.submit(0, work)
                .thenCompose(answer -> sending.send(context, Calculation.JSON, answer)));
  }

  /** What {@code work} makes of the body of a request, in a place. */
  <T> CompletableFuture<T> compute(Context context, Function<byte[], T> work) {
    return compute(context, bodies.begin(context), work);
  }

  private <T> CompletableFuture<T> compute(
      Context context, Bodies.Arriving body, Function<byte[], T> work) {
    return bodies.rest(body.reading()).thenCompose(bytes -> inLane(context, body, bytes, work));
  }

  /**
   * The bytes are held until the work is done; the request may take longer. Its connection stands
   * still meanwhile, and that is no reason to close it.
   */
  private <T> CompletableFuture<T> inLane(
      Context context, Bodies.Arriving body, byte[] bytes, Function<byte[], T> work) {
    CompletableFuture<T> result = lane.submit(bytes.length, () -> work.apply(bytes));
    EndPoint connection = Connections.of(context);
    long usual = connection.getIdleTimeout();
    connection.setIdleTimeout(NEVER);
    return result.whenComplete(
        (answer, failure) -> {
          connection.setIdleTimeout(usual);
          body.share().free();
        });
  }
}
