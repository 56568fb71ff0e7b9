package dev.fillplane.fuzz;

import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

/**
 * Requests to every operation that takes a body: half of them valid, the others with one and with
 * several faults. None is answered with a failure of the service or too late, and every answer fits
 * the contract.
 */
class ContractFuzzTest {

  private static final FuzzRun RUN = new FuzzRun("contract", 1);

  /** Of the requests that are meant to be valid, at least this share is answered. */
  private static final double ANSWERED = 0.4;

  private final FuzzedService service = FuzzedService.shared();
  private int meantWell;
  private int answered;

  @Test
  void everyAnswerFitsTheContract() {
    RUN.each(this::run);
    assertTrue(
        FuzzRun.isReplay() || answered >= ANSWERED * meantWell,
        answered + " answered of " + meantWell);
  }

  private Optional<String> run(int number, Random random) {
    List<Operation> operations = service.operations();
    Operation operation = operations.get(number % operations.size());
    int faults = Chance.of(random, 0, 0, 0, 1, 1, 2 + random.nextInt(5));
    if (!operation.takesJson()) {
      return lines(operation, faults, random);
    }
    JsonNode body = service.requests().make(operation, random);
    for (int i = 0; i < faults; i++) {
      Mutation.of(body, random);
    }
    if (faults > 0 && Chance.oneIn(12, random)) {
      String text = Texts.spoilt(Texts.of(body), random);
      return service.complaint(operation, text).map(complaint -> complaint + "\n" + text);
    }
    Optional<String> complaint = service.shrunkComplaint(operation, body);
    if (complaint.isEmpty() && faults == 0) {
      meantWell++;
      answered += service.post(operation, Texts.of(body)).isGood() ? 1 : 0;
    }
    return complaint.isPresent() ? complaint : units(body);
  }

  /** The units of a job are planned later; here and now each alone. */
  private Optional<String> units(JsonNode body) {
    Operation plans = service.operation("/v1/plans");
    for (JsonNode unit : body.path("plans")) {
      Optional<String> complaint = service.shrunkComplaint(plans, unit);
      if (complaint.isPresent()) {
        return complaint;
      }
    }
    return Optional.empty();
  }

  /** Requests line by line, or a table of readings. */
  private Optional<String> lines(Operation operation, int faults, Random random) {
    StringBuilder text = new StringBuilder();
    if (operation.takesLines()) {
      for (int i = 1 + random.nextInt(3); i > 0; i--) {
        ObjectNode plan = service.requests().plan(random).put("reference", "unit " + i);
        IntStream.range(0, faults).forEach(fault -> Mutation.of(plan, random));
        text.append(Texts.of(plan)).append(Chance.of(random, "\n", "\n\n", "\r\n", " \n"));
      }
    } else {
      text.append(CsvTexts.make(random));
    }
    String body = faults > 2 ? Texts.spoilt(text.toString(), random) : text.toString();
    return service.complaint(operation, body).map(complaint -> complaint + "\n" + body);
  }
}
