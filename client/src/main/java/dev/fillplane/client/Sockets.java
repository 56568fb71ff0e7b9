package dev.fillplane.client;

import java.io.IOException;
import java.net.InetAddress;
import java.net.InetSocketAddress;
import java.net.Socket;
import java.net.SocketTimeoutException;
import java.net.URI;
import java.net.http.HttpConnectTimeoutException;
import java.time.Duration;
import javax.net.ssl.SSLParameters;
import javax.net.ssl.SSLSocket;
import javax.net.ssl.SSLSocketFactory;

/** Connections to the host of an address, with TLS and its name checked where it is https. */
final class Sockets {
  private Sockets() {}

  static Socket connect(URI address, Duration connect, Duration read) throws IOException {
    boolean secure = address.getScheme().equals("https");
    int usual = secure ? 443 : 80;
    int port = address.getPort() < 0 ? usual : address.getPort();
    Socket socket = new Socket();
    try {
      socket.setTcpNoDelay(true);
      InetAddress host = InetAddress.getByName(address.getHost());
      socket.setSoTimeout(millis(read));
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

  private static Socket encrypted(Socket plain, String host, int port) throws IOException {
    SSLSocketFactory factory = (SSLSocketFactory) SSLSocketFactory.getDefault();
    SSLSocket socket = (SSLSocket) factory.createSocket(plain, host, port, true);
    SSLParameters parameters = socket.getSSLParameters();
    parameters.setEndpointIdentificationAlgorithm("HTTPS");
    socket.setSSLParameters(parameters);
    socket.startHandshake();
    return socket;
  }
}
