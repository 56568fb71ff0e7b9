package dev.fillplane.fuzz;

import java.nio.charset.StandardCharsets;

/**
 * What the service answered.
 *
 * @param mediaType without its parameters
 */
record Reply(int status, String mediaType, byte[] body) {

  String text() {
    return new String(body, StandardCharsets.UTF_8);
  }

  boolean isGood() {
    return status < 300;
  }
}
