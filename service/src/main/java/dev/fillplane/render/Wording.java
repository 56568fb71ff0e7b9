package dev.fillplane.render;

import java.util.Map;

/** Makes the sentence of a code in the caller's units. */
@FunctionalInterface
public interface Wording {

  /**
   * The sentence.
   *
   * @param code of a note, a remark or a finding
   * @param values what the sentence mentions
   */
  String sentence(String code, Map<String, Object> values);
}
