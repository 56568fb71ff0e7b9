package dev.fillplane.job;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.net.InetAddress;
import java.net.ServerSocket;
import java.net.Socket;
import java.net.URI;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.concurrent.CopyOnWriteArrayList;
import java.util.concurrent.CountDownLatch;

/** A receiver that answers as a test says, byte by byte if need be. */
final class Receiver implements AutoCloseable {

  /** Answers a request; the connection is closed after it. */
  @FunctionalInterface
  interface Manners {
    void answer(OutputStream out) throws IOException, InterruptedException;
  }

  private final ServerSocket server;
  private final CountDownLatch over = new CountDownLatch(1);
  private final List<String> requests = new CopyOnWriteArrayList<>();

  private Receiver(Manners manners) throws IOException {
    server = new ServerSocket(0, 10, InetAddress.getLoopbackAddress());
    Thread thread = new Thread(() -> serve(manners), "receiver");
    thread.setDaemon(true);
    thread.start();
  }

  static Receiver with(Manners manners) throws IOException {
    return new Receiver(manners);
  }

  static Receiver answering(String head) throws IOException {
    return with(out -> out.write((head + "\r\n\r\n").getBytes(StandardCharsets.UTF_8)));
  }

  /** One that takes the request and says nothing. */
  static Receiver hanging() throws IOException {
    CountDownLatch never = new CountDownLatch(1);
    return with(out -> never.await());
  }

  URI url() {
    return URI.create("http://receiver.test:" + server.getLocalPort() + "/told");
  }

  /** What came, head and body as they were. */
  List<String> requests() {
    return List.copyOf(requests);
  }

  private void serve(Manners manners) {
    while (over.getCount() > 0) {
      try (Socket socket = server.accept()) {
        requests.add(read(socket.getInputStream()));
        manners.answer(socket.getOutputStream());
      } catch (IOException e) {
        // The sender went away, or the test is over.
      } catch (InterruptedException e) {
        Thread.currentThread().interrupt();
        return;
      }
    }
  }

  private static String read(InputStream in) throws IOException {
    ByteArrayOutputStream head = new ByteArrayOutputStream();
    while (!head.toString(StandardCharsets.UTF_8).endsWith("\r\n\r\n")) {
      int next = in.read();
      if (next < 0) {
        throw new IOException("cut short");
      }
      head.write(next);
    }
    String text = head.toString(StandardCharsets.UTF_8);
    int length = Integer.parseInt(text.replaceAll("(?is).*content-length: (\\d+).*", "$1"));
    return text + new String(in.readNBytes(length), StandardCharsets.UTF_8);
  }

  @Override
  public void close() throws IOException {
    over.countDown();
    server.close();
  }
}
