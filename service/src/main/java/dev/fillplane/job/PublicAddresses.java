package dev.fillplane.job;

import java.net.Inet6Address;
import java.net.InetAddress;
import java.util.List;
import java.util.stream.Stream;

/**
 * Which addresses belong to the open internet.
 *
 * <p>Source: the IANA registries of special-purpose addresses for IPv4 and IPv6 (RFC 6890, RFC
 * 8190), and of multicast; from memory. Of IPv6 only global unicast (2000::/3) is open at all, so
 * that loopback, addresses with one of IPv4 inside (::ffff:0:0/96, NAT64's 64:ff9b::/96),
 * unique-local, link-local and multicast ones need no line of their own.
 */
final class PublicAddresses {

  private static final List<AddressBlock> CLOSED =
      Stream.of(
              "0.0.0.0/8",
              "10.0.0.0/8",
              "100.64.0.0/10",
              "127.0.0.0/8",
              "169.254.0.0/16",
              "172.16.0.0/12",
              "192.0.0.0/24",
              "192.0.2.0/24",
              "192.88.99.0/24",
              "192.168.0.0/16",
              "198.18.0.0/15",
              "198.51.100.0/24",
              "203.0.113.0/24",
              "224.0.0.0/4",
              "240.0.0.0/4",
              "2001::/23",
              "2001:db8::/32",
              "2002::/16",
              "3fff::/20")
          .map(AddressBlock::of)
          .toList();

  private static final AddressBlock GLOBAL_UNICAST = AddressBlock.of("2000::/3");

  private PublicAddresses() {}

  static boolean contains(InetAddress address) {
    if (address instanceof Inet6Address && !GLOBAL_UNICAST.contains(address)) {
      return false;
    }
    return CLOSED.stream().noneMatch(block -> block.contains(address));
  }
}
