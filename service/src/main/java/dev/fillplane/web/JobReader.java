package dev.fillplane.web;

import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.JsonToken;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import com.fasterxml.jackson.databind.node.TextNode;
import dev.fillplane.finding.Findings;
import dev.fillplane.finding.Place;
import dev.fillplane.job.WebhookTargets;
import dev.fillplane.quantity.UnitSystem;
import dev.fillplane.web.json.Json;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.List;
import java.util.Optional;

/** Cuts the units out of a job request, as one JSON object or as lines. */
final class JobReader {

  private static final String PLANS = "plans";
  private static final Place LIST = Place.root().at(PLANS);
  private static final Place LINES = Place.root().at("lines");

  private final byte[] body;
  private final SchemaGate gate;
  private final WebhookTargets targets;

  JobReader(byte[] body, SchemaGate gate, WebhookTargets targets) {
    this.body = body;
    this.gate = gate;
    this.targets = targets;
  }

  /**
   * Reads an object with a list of plan requests.
   *
   * @throws Refusal if it is not JSON or not fit to be taken
   */
  JobBody object() {
    ObjectNode told = JsonNodeFactory.instance.objectNode();
    UnitList units = new UnitList(LIST);
    try (JsonParser in = Json.parser(body, 0, body.length)) {
      JsonToken first = in.nextToken();
      if (first == null) {
        throw Refusal.of(Problem.Kind.NOT_JSON, "The body is empty.");
      }
      if (first != JsonToken.START_OBJECT) {
        throw refused(SchemaGate.fault("type", "#", "", TextNode.valueOf("object")));
      }
      while (in.nextToken() == JsonToken.FIELD_NAME) {
        property(in, told, units);
      }
      if (in.nextToken() != null) {
        throw Refusal.of(Problem.Kind.NOT_JSON, "There is text behind the JSON.");
      }
    } catch (JsonProcessingException e) {
      throw Body.notJson(e);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    return JobBody.of(told, units, gate, targets);
  }

  private void property(JsonParser in, ObjectNode told, UnitList units) throws IOException {
    String name = in.currentName();
    JsonToken value = in.nextToken();
    if (!name.equals(PLANS) || value != JsonToken.START_ARRAY) {
      told.set(name, Json.value(in));
      return;
    }
    told.putArray(PLANS);
    for (int i = 0; in.nextToken() != JsonToken.END_ARRAY; i++) {
      if (units.full()) {
        units.addBeyond();
        in.skipChildren();
      } else if (in.currentToken() == JsonToken.START_OBJECT) {
        int start = offset(in.currentTokenLocation().getByteOffset());
        Optional<String> reference = reference(in);
        int end = offset(in.currentLocation().getByteOffset());
        units.add(LIST.at(i), reference, body, start, end);
      } else {
        units.addNone(LIST.at(i));
        in.skipChildren();
      }
    }
  }

  /** The parser counts bytes of UTF-8 only. */
  private static int offset(long offset) {
    if (offset < 0) {
      throw Refusal.of(Problem.Kind.NOT_JSON, "Send the body as UTF-8.");
    }
    return (int) offset;
  }

  /** Goes to the end of an object; what it tells as its reference, if that is a text. */
  private static Optional<String> reference(JsonParser in) throws IOException {
    Optional<String> reference = Optional.empty();
    while (in.nextToken() == JsonToken.FIELD_NAME) {
      boolean wanted = in.currentName().equals("reference");
      if (in.nextToken() == JsonToken.VALUE_STRING && wanted) {
        reference = Optional.of(in.getText());
      }
      in.skipChildren();
    }
    return reference;
  }

  /**
   * Reads lines of plan requests.
   *
   * @param told all else of the request
   * @throws Refusal if a line is no JSON object or the job is not fit to be taken
   */
  JobBody lines(ObjectNode told) {
    UnitList units = new UnitList(LINES);
    int line = 1;
    int start = 0;
    for (int i = 0; i <= body.length; i++) {
      if (i == body.length || body[i] == '\n') {
        line(line, start, i, units);
        line++;
        start = i + 1;
      }
    }
    if (units.size() == 0) {
      told.putArray(PLANS);
    }
    return JobBody.of(told, units, gate, targets);
  }

  private void line(int line, int start, int end, UnitList units) {
    if (blank(start, end)) {
      return;
    }
    if (units.full()) {
      units.addBeyond();
      return;
    }
    try (JsonParser in = Json.parser(body, start, end - start)) {
      if (in.nextToken() == JsonToken.START_OBJECT) {
        Optional<String> reference = reference(in);
        if (in.nextToken() == null) {
          units.add(LINES.at(line), reference, body, start, end);
          return;
        }
      }
      units.add(noObject(line));
    } catch (JsonProcessingException e) {
      units.add(noObject(line));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private boolean blank(int start, int end) {
    for (int i = start; i < end; i++) {
      if (body[i] != ' ' && body[i] != '\t' && body[i] != '\r') {
        return false;
      }
    }
    return true;
  }

  private static Problem.Fault noObject(int line) {
    Findings findings = new Findings();
    findings.error("line-no-object", LINES.at(line));
    return Problem.Fault.of(findings.errors().get(0), UnitSystem.METRIC);
  }

  private static Refusal refused(Problem.Fault fault) {
    return Refusal.of(Problem.Kind.INVALID, "See errors for what and where.", List.of(fault));
  }
}
