package dev.fillplane.web;

import dev.fillplane.web.watch.Note;
import io.javalin.http.Context;
import java.io.IOException;
import java.io.OutputStream;
import java.util.zip.GZIPOutputStream;

/**
 * The body of the answer to a stream: begun with its first line, and every line sent at once. Packs
 * on its own, since the stream of the server's library holds back what it has packed.
 */
final class StreamedAnswers implements PlanLines.Sink {

  private static final int BUFFER_BYTES = 8_192;

  private final Context context;
  private OutputStream out;

  StreamedAnswers(Context context) {
    this.context = context;
  }

  /** Whether a line was sent, so that status and headers stand. */
  boolean begun() {
    return out != null;
  }

  @Override
  public void accept(PlanLines.Answer answer) throws IOException {
    if (!begun()) {
      begin();
    }
    out.write(answer.json());
    out.write('\n');
    out.flush();
    Note.of(context).line();
  }

  /** Nothing more comes. */
  void end() throws IOException {
    if (!begun()) {
      begin();
    }
    out.close();
  }

  private void begin() throws IOException {
    context.contentType(PlanStreams.NDJSON);
    out = context.res().getOutputStream();
    if (Packing.wanted(context)) {
      context.header("Content-Encoding", Packing.GZIP);
      out = new GZIPOutputStream(out, BUFFER_BYTES, true);
    }
  }
}
