package dev.fillplane.safety;

import dev.fillplane.finding.Values;
import dev.fillplane.quantity.Amount;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Something of this job that can hurt somebody; its sentence is made at the edge.
 *
 * @param code stable name in kebab case
 * @param severity how grave it is
 * @param values what the sentence mentions, as in {@link dev.fillplane.finding.Finding#values()}
 * @param value the number computed for this job, if there is one
 * @param limit what it is held against, if there is one
 * @param basis where the limit or the rule comes from
 * @param rooms the ids of those it is about; empty where it is about the whole job
 */
public record Note(
    String code,
    Severity severity,
    Map<String, Object> values,
    Optional<Amount> value,
    Optional<Amount> limit,
    String basis,
    List<String> rooms) {

  /** Copies values and rooms. */
  public Note {
    values = Collections.unmodifiableMap(new LinkedHashMap<>(values));
    rooms = List.copyOf(rooms);
  }

  /** A note without a number; its sentence mentions the pairs {@code name, value, ...}. */
  static Note of(String code, Severity severity, String basis, Object... namesAndValues) {
    Map<String, Object> values = Values.byName(namesAndValues);
    return new Note(code, severity, values, Optional.empty(), Optional.empty(), basis, List.of());
  }

  /** The same with the number computed for this job. */
  Note valued(Amount number) {
    return new Note(
        code, severity, more("value", number), Optional.of(number), limit, basis, rooms);
  }

  /** The same with what the number is held against. */
  Note limited(Amount bound) {
    return new Note(code, severity, more("limit", bound), value, Optional.of(bound), basis, rooms);
  }

  /** The same about some rooms. */
  Note in(PouredRooms some) {
    List<String> names = some.names();
    String text = String.join(", ", names);
    return new Note(code, severity, more("rooms", text), value, limit, basis, names);
  }

  /** The same with one more thing that its sentence mentions. */
  Note with(String name, Object mentioned) {
    return new Note(code, severity, more(name, mentioned), value, limit, basis, rooms);
  }

  private Map<String, Object> more(String name, Object mentioned) {
    Map<String, Object> more = new LinkedHashMap<>(values);
    more.put(name, mentioned);
    return more;
  }
}
