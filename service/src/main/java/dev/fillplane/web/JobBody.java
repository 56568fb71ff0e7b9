package dev.fillplane.web;

import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import dev.fillplane.finding.Findings;
import dev.fillplane.finding.FindingsException;
import dev.fillplane.finding.Place;
import dev.fillplane.job.JobTerms;
import dev.fillplane.job.UnitRequest;
import dev.fillplane.job.WebhookTargets;
import dev.fillplane.quantity.UnitSystem;
import java.util.List;

/**
 * A job request that is fit to be taken. Its units are bytes as they were sent, packed: none is
 * read before its turn, so that a large job takes little more memory than its body.
 */
record JobBody(JobTerms terms, List<UnitRequest> units) {

  static final String SCHEMA = "JobRequest";

  private static final String PLANS = "plans";

  /**
   * Puts a job together.
   *
   * @param told all of the request but its units
   * @param units with what is wrong with them
   * @param targets where webhooks may go
   * @throws Refusal with all that is wrong
   */
  static JobBody of(ObjectNode told, UnitList units, SchemaGate gate, WebhookTargets targets) {
    List<Problem.Fault> faults = units.faults();
    // The units themselves are held against their schema when their turn comes.
    ObjectNode rest = told.deepCopy();
    boolean listed = units.size() > 0;
    if (listed) {
      rest.set(PLANS, JsonNodeFactory.instance.arrayNode());
    }
    gate.faults(SCHEMA, rest).stream()
        .filter(fault -> !(listed && fault.pointer().equals("#/" + PLANS)))
        .forEach(faults::add);
    if (!faults.isEmpty()) {
      throw Refusal.of(Problem.Kind.INVALID, "See errors for what and where.", faults);
    }
    rest.remove(PLANS);
    JobTerms terms = Desk.read(rest, JobTerms.class, UnitSystem.METRIC);
    check(terms, targets);
    return new JobBody(terms, units.requests());
  }

  private static void check(JobTerms terms, WebhookTargets targets) {
    Findings findings = new Findings();
    Place place = Place.root().at("webhook").at("url");
    terms.webhook().ifPresent(webhook -> targets.check(webhook.url(), place, findings));
    if (findings.hasErrors()) {
      throw Refusal.of(new FindingsException(findings.errors()), UnitSystem.METRIC);
    }
  }
}
