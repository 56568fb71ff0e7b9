package dev.fillplane.client;

import java.io.IOException;
import java.net.InetAddress;
import java.net.InetSocketAddress;
import java.net.Socket;
import java.net.SocketTimeoutException;
import java.net.URI;
import java.net.http.HttpConnectTimeoutException;
import java.time.Duration;
import java.util.Optional;
import javax.net.ssl.SSLContext;
import javax.net.ssl.SSLException;
import javax.net.ssl.SSLParameters;
import javax.net.ssl.SSLSocket;
import javax.net.ssl.SSLSocketFactory;

/**
 * Connections to the host of an address, with TLS and its name checked where it is https.
 *
 * @param connect how long to wait for a connection
 * @param read how long to wait for a byte
 * @param tls whom to trust; as Java does unless told
 */
record Sockets(Duration connect, Duration read, Optional<SSLContext> tls) {

  /** Connects to the first address of the host that answers. */
  Connection connect(URI address) throws IOException {
    return connect(address, InetAddress.getAllByName(address.getHost()));
  }

  /** The same with the addresses of the host. */
  Connection connect(URI address, InetAddress... hosts) throws IOException {
    boolean secure = address.getScheme().equals("https");
    int usual = secure ? 443 : 80;
    int port = address.getPort() < 0 ? usual : address.getPort();
    IOException first = null;
    for (InetAddress host : hosts) {
      try {
        Socket plain = reach(new InetSocketAddress(host, port));
        return secure ? encrypted(plain, address.getHost(), port) : new Connection(plain, plain);
      } catch (SSLException e) {
        throw e; // Whom one address shows to be, the others are as well.
      } catch (IOException e) {
        first = first == null ? e : first;
      }
    }
    throw first;
  }

  private Socket reach(InetSocketAddress address) throws IOException {
    Socket socket = new Socket();
    try {
      socket.setTcpNoDelay(true);
      socket.setSoTimeout(millis(read));
      socket.connect(address, millis(connect));
      return socket;
    } catch (SocketTimeoutException e) {
      socket.close();
      throw (IOException) new HttpConnectTimeoutException("No connection in time.").initCause(e);
    } catch (IOException e) {
      socket.close();
      throw e;
    }
  }

  private static int millis(Duration patience) {
    return (int) Math.max(1, Math.min(Integer.MAX_VALUE, patience.toMillis()));
  }

  private Connection encrypted(Socket plain, String host, int port) throws IOException {
    SSLSocketFactory factory =
        tls.map(SSLContext::getSocketFactory)
            .orElseGet(() -> (SSLSocketFactory) SSLSocketFactory.getDefault());
    try {
      SSLSocket socket = (SSLSocket) factory.createSocket(plain, host, port, true);
      SSLParameters parameters = socket.getSSLParameters();
      parameters.setEndpointIdentificationAlgorithm("HTTPS");
      socket.setSSLParameters(parameters);
      socket.startHandshake();
      return new Connection(socket, plain);
    } catch (SocketTimeoutException e) {
      plain.close();
      throw (IOException) new HttpConnectTimeoutException("No TLS in time.").initCause(e);
    } catch (IOException e) {
      plain.close();
      throw e;
    }
  }
}
