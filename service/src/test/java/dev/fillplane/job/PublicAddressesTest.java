package dev.fillplane.job;

import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.net.InetAddress;
import java.net.UnknownHostException;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The first, a middle or the last address of each block, and the neighbours outside. */
class PublicAddressesTest {

  @ParameterizedTest
  @ValueSource(
      strings = {
        "0.0.0.0",
        "0.1.2.3",
        "10.0.0.1",
        "10.255.255.255",
        "100.64.0.1",
        "100.127.255.255",
        "127.0.0.1",
        "127.255.0.1",
        "169.254.169.254",
        "172.16.0.1",
        "172.31.255.255",
        "192.0.0.8",
        "192.0.2.1",
        "192.168.1.1",
        "198.18.0.1",
        "198.19.255.255",
        "198.51.100.7",
        "203.0.113.7",
        "224.0.0.1",
        "239.255.255.255",
        "240.0.0.1",
        "255.255.255.255",
        "::",
        "::1",
        "::ffff:127.0.0.1",
        "::127.0.0.1",
        "64:ff9b::7f00:1",
        "64:ff9b::808:808",
        "64:ff9b:1::1",
        "100::1",
        "2001::1",
        "2001:db8::1",
        "2002:7f00:1::",
        "3fff:0:1::1",
        "fc00::1",
        "fd12:3456::1",
        "fe80::1",
        "fec0::1",
        "ff02::1"
      })
  void closed(String text) throws UnknownHostException {
    assertFalse(PublicAddresses.contains(InetAddress.getByName(text)), text);
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "1.1.1.1",
        "9.255.255.255",
        "11.0.0.0",
        "100.63.255.255",
        "100.128.0.0",
        "126.255.255.255",
        "128.0.0.1",
        "169.253.1.1",
        "172.15.255.255",
        "172.32.0.0",
        "192.167.1.1",
        "198.17.255.255",
        "198.20.0.0",
        "223.255.255.255",
        "2001:200::1",
        "2400:cb00::1",
        "2a00::1",
        "3ffe::1"
      })
  void open(String text) throws UnknownHostException {
    assertTrue(PublicAddresses.contains(InetAddress.getByName(text)), text);
  }

  /** Whatever Java makes of a name, an address of IPv4 inside one of IPv6 leads nowhere closed. */
  @ParameterizedTest
  @ValueSource(strings = {"::ffff:10.0.0.1", "::ffff:169.254.169.254", "::ffff:7f00:1"})
  void closedAddressesInsideOthers(String text) throws UnknownHostException {
    assertFalse(PublicAddresses.contains(InetAddress.getByName(text)), text);
  }
}
