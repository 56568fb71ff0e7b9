package dev.fillplane.web;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Reads the crew out of the sentence of a change that asks for more than a crew. */
final class ToldCrew {

  private static final Pattern CREW =
      Pattern.compile(
          "this crew: (\\d+) people, (\\d+) mixers, (\\d+) barrels \\((\\d+) filled ahead\\),"
              + " bags in a batch: (\\d+)");

  private ToldCrew() {}

  /** Puts it into a crew of a request; leaves that alone where the change tells none. */
  static void put(JsonNode change, ObjectNode crew) {
    Matcher told = CREW.matcher(change.get("text").asText());
    if (told.find()) {
      String[] names = {"people", "mixers", "barrels", "preFilled", "bagsPerBatch"};
      for (int i = 0; i < names.length; i++) {
        crew.put(names[i], Integer.parseInt(told.group(i + 1)));
      }
    }
  }
}
