package dev.fillplane.client;

import java.io.IOException;
import java.io.InputStream;
import java.net.http.HttpHeaders;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/** Status and headers of an answer over HTTP/1.1 (RFC 9112). */
record AnswerHead(int status, HttpHeaders headers) {
  private static final int LONGEST = 1 << 16;

  /** Reads the head of the answer, past those that only say that one will come (1xx). */
  static AnswerHead read(InputStream in) throws IOException {
    AnswerHead head = once(in);
    while (head.status() < 200) {
      head = once(in);
    }
    return head;
  }

  /** The body that follows this head. */
  InputStream body(InputStream in) throws IOException {
    if (headers.firstValue("Transfer-Encoding").orElse("").equalsIgnoreCase("chunked")) {
      return new ChunkedInput(in);
    }
    Optional<String> length = headers.firstValue("Content-Length");
    return length.isPresent() ? new ChunkedInput(in, size(length.get())) : in;
  }

  private static long size(String length) throws IOException {
    if (!length.matches("\\d{1,18}")) {
      throw new IOException("The answer is not HTTP/1.1: its length is no number.");
    }
    return Long.parseLong(length);
  }

  /** One line without its end. */
  static String line(InputStream in, int longest) throws IOException {
    StringBuilder line = new StringBuilder();
    for (int next = in.read(); next != '\n'; next = in.read()) {
      if (next < 0) {
        throw new IOException("The answer broke off.");
      }
      if (line.length() >= longest) {
        throw new IOException("The answer is not HTTP: a line without end.");
      }
      line.append((char) next);
    }
    return line.toString().stripTrailing();
  }

  private static AnswerHead once(InputStream in) throws IOException {
    String[] words = line(in, LONGEST).split(" ", 3);
    if (words.length < 2 || !words[0].startsWith("HTTP/1.") || !words[1].matches("[1-5]\\d\\d")) {
      throw new IOException("The answer is not HTTP/1.1.");
    }
    Map<String, List<String>> headers = new TreeMap<>(String.CASE_INSENSITIVE_ORDER);
    int left = LONGEST;
    for (String line = line(in, left); !line.isEmpty(); line = line(in, left)) {
      left -= line.length();
      int colon = line.indexOf(':');
      if (colon < 1 || line.substring(0, colon).isBlank()) {
        throw new IOException("The answer is not HTTP/1.1: a header without a name.");
      }
      headers
          .computeIfAbsent(line.substring(0, colon), name -> new ArrayList<>())
          .add(line.substring(colon + 1).strip());
    }
    return new AnswerHead(Integer.parseInt(words[1]), HttpHeaders.of(headers, (n, v) -> true));
  }
}
