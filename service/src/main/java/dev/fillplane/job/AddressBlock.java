package dev.fillplane.job;

import java.net.InetAddress;
import java.net.UnknownHostException;

/**
 * The addresses that begin with the same bits.
 *
 * @param start bytes of the first of them
 * @param bits how many bits they share
 */
record AddressBlock(byte[] start, int bits) {

  /** The block that {@code text} writes, such as {@code 10.0.0.0/8}. */
  static AddressBlock of(String text) {
    int slash = text.indexOf('/');
    try {
      byte[] start = InetAddress.getByName(text.substring(0, slash)).getAddress();
      return new AddressBlock(start, Integer.parseInt(text.substring(slash + 1)));
    } catch (UnknownHostException e) {
      throw new IllegalArgumentException(text, e);
    }
  }

  boolean contains(InetAddress address) {
    byte[] bytes = address.getAddress();
    if (bytes.length != start.length) {
      return false;
    }
    for (int i = 0; i < bits; i++) {
      int mask = 0x80 >> (i % 8);
      if ((bytes[i / 8] & mask) != (start[i / 8] & mask)) {
        return false;
      }
    }
    return true;
  }
}
