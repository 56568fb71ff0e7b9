package dev.fillplane.web;

import com.fasterxml.jackson.databind.node.IntNode;
import com.fasterxml.jackson.databind.node.TextNode;
import dev.fillplane.finding.Findings;
import dev.fillplane.finding.Place;
import dev.fillplane.job.JobSettings;
import dev.fillplane.job.UnitRequest;
import dev.fillplane.quantity.UnitSystem;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/** Collects the units of a job request and what is wrong with their list. */
final class UnitList {

  private static final int REFERENCE_LENGTH = 80;
  private static final String REFERENCE = "reference";

  private final Place list;
  private final List<UnitRequest> requests = new ArrayList<>();
  private final List<Problem.Fault> faults = new ArrayList<>();
  private final Set<String> references = new HashSet<>();
  private int size;

  /** Of the list at a place. */
  UnitList(Place list) {
    this.list = list;
  }

  /** Whether one more would be too many, so that its bytes need not be kept. */
  boolean full() {
    return size >= JobSettings.MOST_UNITS;
  }

  /**
   * Adds a unit.
   *
   * @param place of it in the request
   * @param reference what it tells as such, if it is a text
   * @param body in which it stands, from {@code start} to before {@code end}
   */
  void add(Place place, Optional<String> reference, byte[] body, int start, int end) {
    size++;
    Place told = place.at(REFERENCE);
    if (reference.isEmpty()) {
      faults.add(SchemaGate.fault("required", told.toString(), REFERENCE, null));
    } else if (!fits(reference.get())) {
      faults.add(SchemaGate.fault("pattern", told.toString(), "", null));
    } else if (!references.add(reference.get())) {
      Findings findings = new Findings();
      findings.error("reference-taken", told, REFERENCE, reference.get());
      faults.add(Problem.Fault.of(findings.errors().get(0), UnitSystem.METRIC));
    } else {
      requests.add(UnitRequest.of(reference.get(), body, start, end));
    }
  }

  /** Notes something that is no object. */
  void addNone(Place place) {
    size++;
    faults.add(SchemaGate.fault("type", place.toString(), "", TextNode.valueOf("object")));
  }

  /** Notes one too many. */
  void addBeyond() {
    if (size == JobSettings.MOST_UNITS) {
      IntNode most = IntNode.valueOf(JobSettings.MOST_UNITS);
      faults.add(SchemaGate.fault("maxItems", list.toString(), "", most));
    }
    size++;
  }

  /** Notes another fault of a unit. */
  void add(Problem.Fault fault) {
    size++;
    faults.add(fault);
  }

  /** As the contract has it, and nothing that a database may not keep. */
  private static boolean fits(String reference) {
    return !reference.isEmpty()
        && reference.codePointCount(0, reference.length()) <= REFERENCE_LENGTH
        && reference.codePoints().noneMatch(sign -> Character.isISOControl(sign) || isHalf(sign));
  }

  private static boolean isHalf(int sign) {
    return Character.getType(sign) == Character.SURROGATE;
  }

  int size() {
    return size;
  }

  List<UnitRequest> requests() {
    return requests;
  }

  List<Problem.Fault> faults() {
    return faults;
  }
}
