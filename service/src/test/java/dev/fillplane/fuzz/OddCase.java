package dev.fillplane.fuzz;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import com.sun.management.OperatingSystemMXBean;
import dev.fillplane.web.Trees;
import java.lang.management.ManagementFactory;
import java.util.Optional;
import java.util.stream.Stream;
import java.util.stream.StreamSupport;
import org.junit.jupiter.api.DynamicTest;

/**
 * A request that is odd on purpose, and what comes of it.
 *
 * @param code of the error that it is refused with; empty where it is answered, {@code either}
 *     where any error would do as well
 * @param pointer where the error is
 */
record OddCase(String name, ObjectNode request, String code, String pointer) {

  /** It is answered with numbers that hold together. */
  static OddCase answered(String name, ObjectNode request) {
    return new OddCase(name, request, "", "");
  }

  /** It is refused with a code at a place. */
  static OddCase refused(String name, ObjectNode request, String code, String pointer) {
    return new OddCase(name, request, code, pointer);
  }

  /** It is answered so or refused with a code at its place. */
  static OddCase either(String name, ObjectNode request) {
    return new OddCase(name, request, "either", "");
  }

  /** A test of each case at an operation. */
  static Stream<DynamicTest> tests(String path, Stream<OddCase> cases) {
    return cases.map(odd -> DynamicTest.dynamicTest(odd.name, () -> odd.test(path)));
  }

  private void test(String path) {
    FuzzedService service = FuzzedService.shared();
    Operation operation = service.operation(path);
    long before = cpu();
    Reply reply = service.post(operation, Texts.of(request));
    if (Boolean.getBoolean("fuzz.times")) {
      System.out.printf("%8.3f CPU s: %s%n", (cpu() - before) / 1e9, name);
    }
    assertEquals(Optional.empty(), service.broken(operation, request, reply));
    if (code.equals("either") && reply.status() == 422) {
      assertFalse(Trees.of(reply.body()).get("errors").isEmpty(), reply.text());
      return;
    }
    if (code.isEmpty() || code.equals("either")) {
      assertTrue(reply.isGood(), reply.text());
      return;
    }
    assertEquals(422, reply.status(), reply.text());
    JsonNode errors = Trees.of(reply.body()).get("errors");
    assertTrue(
        StreamSupport.stream(errors.spliterator(), false)
            .anyMatch(
                error ->
                    error.get("code").textValue().equals(code)
                        && error.get("pointer").textValue().equals(pointer)),
        errors.toString());
  }

  /** Of the whole process, as most of the work is that of the server. */
  private static long cpu() {
    return ((OperatingSystemMXBean) ManagementFactory.getOperatingSystemMXBean())
        .getProcessCpuTime();
  }
}
