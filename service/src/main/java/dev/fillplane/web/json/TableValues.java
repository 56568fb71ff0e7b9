package dev.fillplane.web.json;

import com.fasterxml.jackson.annotation.JsonValue;
import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.core.JsonToken;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectReader;
import com.fasterxml.jackson.databind.node.DoubleNode;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.Arrays;
import java.util.Collections;
import java.util.HexFormat;
import java.util.SortedMap;
import java.util.TreeMap;

/**
 * The numbers of a table as a request tells them, without a node for each: the value of a node in
 * the tree of the request. What is no number of a measurement is kept beside them, the first {@link
 * #ODD_KEPT} of it.
 */
public final class TableValues {

  /** Numbers that are kept; more are counted only. */
  public static final int MOST = 3_000_000;

  /** Elements that are no number of a measurement and are kept. */
  public static final int ODD_KEPT = 100;

  private static final int FIRST_ROOM = 1_024;
  private static final int HASHED_AT_ONCE = 8_192;

  private final SortedMap<Integer, JsonNode> odd = new TreeMap<>();
  private double[] numbers = new double[FIRST_ROOM];
  private int count;

  private TableValues() {}

  /**
   * Reads an array whose start was just read, to its end.
   *
   * @param elements reads an element that is no number
   */
  static TableValues read(JsonParser in, ObjectReader elements) throws IOException {
    TableValues values = new TableValues();
    for (JsonToken token = in.nextToken(); token != JsonToken.END_ARRAY; token = in.nextToken()) {
      values.add(token, in, elements);
    }
    return values;
  }

  private void add(JsonToken token, JsonParser in, ObjectReader elements) throws IOException {
    double number = token.isNumeric() ? in.getDoubleValue() : Double.NaN;
    if (!(Math.abs(number) <= Json.LARGEST_NUMBER)) {
      number = 0;
      if (odd.size() < ODD_KEPT) {
        odd.put(count, elements.readTree(in));
      } else {
        in.skipChildren();
      }
    }
    if (count < MOST) {
      if (count == numbers.length) {
        numbers = Arrays.copyOf(numbers, Math.min(MOST, 2 * count));
      }
      numbers[count] = number;
    }
    count++;
  }

  /** How many elements there are. */
  public int count() {
    return count;
  }

  /** An element; 0 where it is no number of a measurement. */
  public double number(int index) {
    return numbers[index];
  }

  /** What is no number of a measurement, by its index. */
  public SortedMap<Integer, JsonNode> odd() {
    return Collections.unmodifiableSortedMap(odd);
  }

  /** An element as it would stand in a tree. */
  public JsonNode node(int index) {
    JsonNode node = odd.get(index);
    return node == null ? DoubleNode.valueOf(numbers[index]) : node;
  }

  /** What stands for the numbers in the canonical form of a request: their SHA-256. */
  @JsonValue
  String fingerprint() {
    try {
      MessageDigest sha = MessageDigest.getInstance("SHA-256");
      ByteBuffer block = ByteBuffer.allocate(HASHED_AT_ONCE * Double.BYTES);
      int kept = Math.min(count, MOST);
      for (int from = 0; from < kept; from += HASHED_AT_ONCE) {
        block.clear();
        for (int i = from; i < Math.min(kept, from + HASHED_AT_ONCE); i++) {
          // Adding 0 makes -0 and 0 the same.
          block.putDouble(numbers[i] + 0.0);
        }
        sha.update(block.flip());
      }
      return HexFormat.of().formatHex(sha.digest());
    } catch (NoSuchAlgorithmException e) {
      throw new IllegalStateException(e);
    }
  }
}
