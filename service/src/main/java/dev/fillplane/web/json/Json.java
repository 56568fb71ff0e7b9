package dev.fillplane.web.json;

import com.fasterxml.jackson.annotation.JsonInclude;
import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.core.StreamReadConstraints;
import com.fasterxml.jackson.core.StreamReadFeature;
import com.fasterxml.jackson.databind.DeserializationFeature;
import com.fasterxml.jackson.databind.JsonMappingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.MapperFeature;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.ObjectReader;
import com.fasterxml.jackson.databind.SerializationFeature;
import com.fasterxml.jackson.databind.json.JsonMapper;
import com.fasterxml.jackson.datatype.jdk8.Jdk8Module;
import dev.fillplane.quantity.UnitSystem;
import dev.fillplane.survey.Survey;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.EnumMap;
import java.util.Map;

/** Reads and writes the records of the service. Immutable and safe to share. */
public final class Json {

  /** How deep arrays and objects of a request may nest. */
  public static final int NESTING_LIMIT = 40;

  /** How long the name of a property of a request may be. */
  public static final int NAME_LIMIT = 100;

  /** Numbers beyond this measure nothing; kept low enough for any unit and any product of two. */
  public static final double LARGEST_NUMBER = 1e16;

  private static final Map<UnitSystem, ObjectMapper> MAPPERS = mappers();
  private static final ObjectMapper TREES = plain();
  private static final ObjectReader ELEMENTS =
      TREES.readerFor(JsonNode.class).without(DeserializationFeature.FAIL_ON_TRAILING_TOKENS);

  private Json() {}

  /**
   * The tree of a request. The numbers of the table of its survey have no nodes of their own but
   * are the {@link TableValues} of one node.
   *
   * @throws IOException if {@code body} is not one JSON value: malformed, with trailing text, with
   *     a property told twice, nested deeper or named longer than allowed
   */
  public static JsonNode tree(byte[] body) throws IOException {
    try (JsonParser in = new TableParser(TREES.createParser(body), ELEMENTS)) {
      JsonNode tree = TREES.readTree(in);
      return tree == null ? TREES.missingNode() : tree;
    }
  }

  /** Reads a request token by token, under the rules of {@link #tree}. */
  public static JsonParser parser(byte[] body, int offset, int length) throws IOException {
    return TREES.createParser(body, offset, length);
  }

  /** The value that a parser stands at, after which it goes on. */
  public static JsonNode value(JsonParser in) throws IOException {
    return ELEMENTS.readValue(in);
  }

  /**
   * The record that {@code tree} tells in {@code units}.
   *
   * @throws JsonMappingException if the tree does not fit the record, which its schema should have
   *     shown before
   */
  public static <T> T read(JsonNode tree, Class<T> type, UnitSystem units)
      throws JsonMappingException {
    try {
      return MAPPERS.get(units).treeToValue(tree, type);
    } catch (JsonMappingException e) {
      throw e;
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** {@code value} in {@code units}, compact. */
  public static byte[] bytes(Object value, UnitSystem units) {
    try {
      return MAPPERS.get(units).writeValueAsBytes(value);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** {@code value} in {@code units} as a tree. */
  public static JsonNode toTree(Object value, UnitSystem units) {
    return MAPPERS.get(units).valueToTree(value);
  }

  /**
   * {@code tree} with the properties of every object in the order of their names and {@link
   * TableValues} as a hash of their numbers.
   */
  public static byte[] canonical(JsonNode tree) {
    try {
      return TREES.writeValueAsBytes(TREES.treeToValue(tree, Object.class));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static Map<UnitSystem, ObjectMapper> mappers() {
    Map<UnitSystem, ObjectMapper> mappers = new EnumMap<>(UnitSystem.class);
    for (UnitSystem system : UnitSystem.values()) {
      ObjectMapper mapper = plain();
      mapper.setAnnotationIntrospector(new MeasuredIntrospector(system));
      mapper.registerModule(new WireModule(system));
      // In a request a list that is told holds something, so an answer leaves empty ones out.
      mapper
          .configOverride(Survey.class)
          .setInclude(
              JsonInclude.Value.construct(
                  JsonInclude.Include.NON_EMPTY, JsonInclude.Include.NON_EMPTY));
      mappers.put(system, mapper);
    }
    return mappers;
  }

  private static ObjectMapper plain() {
    JsonFactory factory =
        JsonFactory.builder()
            .enable(StreamReadFeature.STRICT_DUPLICATE_DETECTION)
            .enable(StreamReadFeature.USE_FAST_DOUBLE_PARSER)
            .streamReadConstraints(
                StreamReadConstraints.builder()
                    .maxNestingDepth(NESTING_LIMIT)
                    .maxNameLength(NAME_LIMIT)
                    .maxNumberLength(100)
                    .build())
            .build();
    return JsonMapper.builder(factory)
        .addModule(new Jdk8Module())
        .defaultPropertyInclusion(
            JsonInclude.Value.construct(
                JsonInclude.Include.NON_ABSENT, JsonInclude.Include.NON_ABSENT))
        .disable(MapperFeature.ALLOW_COERCION_OF_SCALARS)
        .enable(DeserializationFeature.FAIL_ON_TRAILING_TOKENS)
        .enable(DeserializationFeature.FAIL_ON_NULL_FOR_PRIMITIVES)
        .enable(DeserializationFeature.FAIL_ON_UNKNOWN_PROPERTIES)
        .enable(SerializationFeature.ORDER_MAP_ENTRIES_BY_KEYS)
        .build();
  }
}
