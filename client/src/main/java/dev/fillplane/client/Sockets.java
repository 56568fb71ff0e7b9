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

  Socket connect(URI address) throws IOException {
    boolean secure = address.getScheme().equals("https");
    int usual = secure ? 443 : 80;
    int port = address.getPort() < 0 ? usual : address.getPort();
    Socket socket = new Socket();
    try {
      socket.setTcpNoDelay(true);
      socket.setSoTimeout(millis(read));
      InetAddress host = InetAddress.getByName(address.getHost());
      socket.connect(new InetSocketAddress(host, port), millis(connect));
      return secure ? encrypted(socket, address.getHost(), port) : socket;
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

  private Socket encrypted(Socket plain, String host, int port) throws IOException {
    SSLSocketFactory factory =
        tls.map(SSLContext::getSocketFactory)
            .orElseGet(() -> (SSLSocketFactory) SSLSocketFactory.getDefault());
    SSLSocket socket = (SSLSocket) factory.createSocket(plain, host, port, true);
    SSLParameters parameters = socket.getSSLParameters();
    parameters.setEndpointIdentificationAlgorithm("HTTPS");
    socket.setSSLParameters(parameters);
    socket.startHandshake();
    return socket;
  }
}
