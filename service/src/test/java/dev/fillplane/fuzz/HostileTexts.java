package dev.fillplane.fuzz;

import java.util.List;
import java.util.stream.Stream;

/** Names and ids that mean something to what they are written into. */
final class HostileTexts {

  /** Texts that the contract lets through where it asks for a name. */
  static final List<String> ALLOWED =
      List.of(
          "\"double\" and 'single' quotes",
          "<script>alert(1)</script>",
          "</text></svg><script>alert(1)</script>",
          "&lt;b&gt; & &amp; &#0; &x",
          "<![CDATA[ ]]> -->",
          "]]>",
          "<!-- --!> <?xml ?>",
          "%n %s %d 100%",
          "${jndi:x} #{7*7} {{7*7}} {name}",
          "back\\slash \\n \\u0041 \\",
          "'; DROP TABLE jobs;--",
          "../../etc/passwd",
          "http://example.invalid/?a=1&b=2",
          "javascript:alert(1)",
          "a\u202Egpj.exe\u202C",
          "\u2066isolate",
          "\u200F\u05D0\u05D1\u05D2 12",
          "\uFEFFmark",
          "family \uD83D\uDC68\u200D\uD83D\uDC69\u200D\uD83D\uDC67",
          "e\u0301\u0323\u0302\u031B combining",
          "Z\u0351\u036B\u0343\u036A\u0302\u0346\u034E\u0310\u036A\u0303",
          "\u2028line\u2029paragraph",
          "\uFFFE\uFFFF none",
          "\uFFFD",
          "\u0430dmin",
          "admin",
          " ",
          "\u00A0",
          "\u200B",
          "=1+1",
          "+1",
          "-cmd",
          "@SUM(1)",
          "=HYPERLINK(\"http://example.invalid\",\"x\")",
          "\uFF1D1+1",
          "\u200B=1+1",
          "\u00A0@1",
          ";,|",
          "x".repeat(80),
          "\uD83D\uDE00".repeat(80),
          "W".repeat(80),
          "#/rooms/0",
          "~0~1",
          "__proto__",
          "null",
          "NaN");

  /** Texts that no name may be. */
  static final List<String> REFUSED =
      List.of(
          "",
          "\u0000",
          "nul\u0000inside",
          "line\r\nX-Injected: yes",
          "\ttab",
          "\n=1+1",
          "\u001B[31mred",
          "\u0085",
          "\u007F",
          "x".repeat(10_000),
          "x".repeat(81));

  /** Texts that are no characters at all. */
  static final List<String> LONE = List.of("\uD800", "a\uDFFFb", "\uDC00\uD800");

  /** All of them. */
  static final List<String> ALL = Stream.of(ALLOWED, REFUSED, LONE).flatMap(List::stream).toList();

  /** Names of properties that are none. */
  static final List<String> NAMES =
      List.of("", "x", "Units", "a/b~c", "<b>", "\u0000", "\uD800", "__proto__", "n".repeat(101));

  private HostileTexts() {}
}
