package dev.fillplane.web;

import java.util.EnumSet;
import org.eclipse.jetty.http.HttpFields;
import org.eclipse.jetty.http.HttpHeader;
import org.eclipse.jetty.server.HttpConfiguration;
import org.eclipse.jetty.server.Request;

/**
 * Overlooks the wish for another protocol, as RFC 9110, 7.8 allows. Else the HTTP library would
 * keep a session for each that wishes for a web socket, though there are none.
 */
final class NoUpgrades implements HttpConfiguration.Customizer {

  private static final EnumSet<HttpHeader> MARKS =
      EnumSet.of(HttpHeader.UPGRADE, HttpHeader.SEC_WEBSOCKET_VERSION);

  @Override
  public Request customize(Request request, HttpFields.Mutable answer) {
    return MARKS.stream().anyMatch(request.getHeaders()::contains) ? plain(request) : request;
  }

  private static Request plain(Request request) {
    HttpFields headers = HttpFields.build(request.getHeaders()).remove(MARKS);
    return new Request.Wrapper(request) {
      @Override
      public HttpFields getHeaders() {
        return headers;
      }
    };
  }
}
