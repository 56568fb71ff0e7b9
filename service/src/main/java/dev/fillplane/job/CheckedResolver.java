package dev.fillplane.job;

import java.io.IOException;
import java.net.InetAddress;
import java.net.InetSocketAddress;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.concurrent.Executor;
import org.eclipse.jetty.util.Promise;
import org.eclipse.jetty.util.SocketAddressResolver;

/**
 * Finds the addresses of a name and gives out only those that messages may go to. What it gives out
 * is what is connected to, so that a name which leads elsewhere a moment later gains nothing.
 */
record CheckedResolver(Names names, WebhookTargets targets, Executor executor)
    implements SocketAddressResolver {

  /** Finds the addresses of a name. */
  @FunctionalInterface
  interface Names {
    InetAddress[] find(String host) throws IOException;
  }

  /** A name led only to addresses that messages may not go to. */
  static final class ForbiddenAddress extends IOException {
    private static final long serialVersionUID = 1;

    ForbiddenAddress() {
      super("the address is not of the open internet");
    }
  }

  @Override
  public void resolve(
      String host,
      int port,
      Map<String, Object> context,
      Promise<List<InetSocketAddress>> promise) {
    executor.execute(
        () -> {
          try {
            promise.succeeded(allowed(host, port));
          } catch (IOException e) {
            promise.failed(e);
          }
        });
  }

  private List<InetSocketAddress> allowed(String host, int port) throws IOException {
    List<InetSocketAddress> allowed =
        Arrays.stream(names.find(host))
            .filter(targets::allows)
            .map(address -> new InetSocketAddress(address, port))
            .toList();
    if (allowed.isEmpty()) {
      throw new ForbiddenAddress();
    }
    return allowed;
  }
}
