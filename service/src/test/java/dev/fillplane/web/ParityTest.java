package dev.fillplane.web;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.core.importer.ImportOption;
import dev.fillplane.openapi.Contract;
import dev.fillplane.quantity.Dimension;
import dev.fillplane.quantity.Measured;
import dev.fillplane.web.json.Words;
import java.lang.reflect.ParameterizedType;
import java.lang.reflect.RecordComponent;
import java.lang.reflect.Type;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;

/** Every record of the wire has the names, types, required parts and dimensions of its schema. */
class ParityTest {

  /** Schemas whose shape on the wire is made by hand, and how it is held to the contract. */
  private static final Set<String> BY_HAND =
      Set.of(
          "Outline", // GeoJSON, JsonTest
          "ComparisonRequest", // merge patches, ComparisonsTest
          "Variation",
          "Contours",
          "ContourFeature",
          "ContourProperties",
          "ContourGeometry",
          "PlanShapeGeometry", // GeoJSON, PlanShapesTest
          "Grid",
          "Deviations",
          "Amount",
          "UnitCodes",
          "Warning", // a finding, JsonTest
          "ProblemDetail",
          "Remark",
          "Change",
          "SafetyNote",
          "Table");

  /** Schemas that are not called as their records. */
  private static final Map<String, String> CALLED =
      Map.of("Material", "MaterialWish", "MethodInfo", "Method", "Health", "State");

  private static final Contract CONTRACT = Contract.load();
  private static final Map<String, Class<?>> RECORDS = records();

  @Test
  void everyRecordIsItsSchema() {
    List<String> differences = new ArrayList<>();
    int compared = 0;
    for (var entry : CONTRACT.document().at("/components/schemas").properties()) {
      JsonNode schema = entry.getValue();
      if (!schema.path("type").asText().equals("object") || BY_HAND.contains(entry.getKey())) {
        continue;
      }
      Class<?> type = RECORDS.get(CALLED.getOrDefault(entry.getKey(), entry.getKey()));
      if (type == null) {
        if (!schema.path("properties").has("items")) {
          differences.add(entry.getKey() + " has no record");
        }
        continue;
      }
      compare(entry.getKey(), schema, type, differences);
      compared++;
    }
    assertEquals(List.of(), differences);
    assertTrue(compared > 50, "compared only " + compared);
  }

  private static void compare(
      String name, JsonNode schema, Class<?> type, List<String> differences) {
    boolean request = schema.has("additionalProperties");
    Set<String> left = new TreeSet<>();
    schema.path("properties").fieldNames().forEachRemaining(left::add);
    Set<String> required = new TreeSet<>();
    schema.path("required").forEach(property -> required.add(property.asText()));
    for (RecordComponent component : type.getRecordComponents()) {
      String place = name + "." + component.getName();
      JsonNode property = schema.path("properties").path(component.getName());
      if (!left.remove(component.getName())) {
        differences.add(place + " is not in the schema");
        continue;
      }
      compare(place, property, component, request, differences);
      boolean must = required.contains(component.getName());
      if (request ? must && mayMiss(component.getType()) : must == mayMiss(component.getType())) {
        differences.add(place + " is required: " + must);
      }
    }
    if (!request) {
      left.removeAll(Set.of("units", "unitCodes"));
    }
    left.forEach(property -> differences.add(name + "." + property + " is not in the record"));
  }

  private static void compare(
      String place,
      JsonNode property,
      RecordComponent component,
      boolean request,
      List<String> differences) {
    Measured measured = component.getAnnotation(Measured.class);
    String dimension = measured == null ? "" : Words.property(measured.value());
    JsonNode numbers =
        property.path("type").asText().equals("array") ? property.path("items") : property;
    if (!numbers.path("x-dimension").asText("").equals(dimension)) {
      differences.add(place + " has the dimension " + dimension);
    }
    String wanted =
        measured != null && measured.value() == Dimension.FILL_PRICE
            ? "string"
            : wireType(bare(component.getGenericType()));
    JsonNode target = resolve(property);
    if (!target.path("type").asText().equals(wanted)) {
      differences.add(place + " is " + wanted + ", in the schema " + target.path("type").asText());
    }
    if (bare(component.getGenericType()) instanceof Class<?> type && type.isEnum() && request) {
      Set<String> words = new TreeSet<>();
      for (Object constant : type.getEnumConstants()) {
        words.add(Words.of((Enum<?>) constant));
      }
      Set<String> told = new TreeSet<>();
      target.path("enum").forEach(word -> told.add(word.asText()));
      if (!words.equals(told)) {
        differences.add(place + " has the words " + words + ", in the schema " + told);
      }
    }
    if (!request && target.has("enum")) {
      differences.add(place + " is a closed list of an answer");
    }
  }

  private static JsonNode resolve(JsonNode property) {
    String reference = property.path("$ref").asText("");
    return reference.isEmpty() ? property : CONTRACT.document().at(reference.substring(1));
  }

  private static boolean mayMiss(Class<?> type) {
    return type == Optional.class || type == OptionalDouble.class || type == OptionalInt.class;
  }

  private static Type bare(Type type) {
    if (type instanceof ParameterizedType generic && generic.getRawType() == Optional.class) {
      return generic.getActualTypeArguments()[0];
    }
    return type;
  }

  private static String wireType(Type type) {
    Class<?> raw =
        type instanceof ParameterizedType generic
            ? (Class<?>) generic.getRawType()
            : (Class<?>) type;
    if (Set.of(double.class, Double.class, OptionalDouble.class).contains(raw)) {
      return "number";
    }
    if (Set.of(int.class, Integer.class, OptionalInt.class, long.class, Long.class).contains(raw)) {
      return "integer";
    }
    if (raw == boolean.class || raw == Boolean.class) {
      return "boolean";
    }
    if (raw == String.class || raw == BigDecimal.class || raw.isEnum()) {
      return "string";
    }
    boolean array = raw.isArray() || raw == List.class || raw.getSimpleName().equals("Position");
    return array ? "array" : "object";
  }

  private static Map<String, Class<?>> records() {
    Map<String, Class<?>> records = new TreeMap<>();
    for (JavaClass type :
        new ClassFileImporter()
            .withImportOption(ImportOption.Predefined.DO_NOT_INCLUDE_TESTS)
            .importPackages("dev.fillplane")) {
      if (type.isRecord() && !type.getPackageName().startsWith("dev.fillplane.client")) {
        records.put(type.getSimpleName(), type.reflect());
      }
    }
    return records;
  }
}
