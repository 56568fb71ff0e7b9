package dev.fillplane.openapi;

import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.databind.DeserializationFeature;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.json.JsonMapper;
import com.fasterxml.jackson.dataformat.yaml.YAMLFactory;
import com.fasterxml.jackson.dataformat.yaml.YAMLGenerator;
import com.fasterxml.jackson.dataformat.yaml.util.StringQuotingChecker;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Stream;

/** The contract's files in one folder, each read once; names are relative to that folder. */
final class ContractFiles {
  private static final ObjectMapper JSON = strict(new JsonMapper());
  private static final ObjectMapper YAML = strict(new ObjectMapper(yamlFactory()));

  private final Path folder;
  private final Map<String, JsonNode> read = new TreeMap<>();

  ContractFiles(Path folder) {
    this.folder = folder;
  }

  boolean has(String name) {
    return Files.isRegularFile(folder.resolve(name));
  }

  JsonNode content(String name) throws IOException {
    JsonNode known = read.get(name);
    if (known != null) {
      return known;
    }
    JsonNode content;
    try (var in = Files.newInputStream(folder.resolve(name))) {
      content = (name.endsWith(".json") ? JSON : YAML).readTree(in);
    } catch (IOException e) {
      throw new IOException(name + ": " + e.getMessage(), e);
    }
    read.put(name, content);
    return content;
  }

  /** Names of the files in a folder below this one, sorted; none if there is no such folder. */
  List<String> names(String subfolder, String ending) throws IOException {
    Path inside = folder.resolve(subfolder);
    if (!Files.isDirectory(inside)) {
      return List.of();
    }
    try (Stream<Path> files = Files.list(inside)) {
      return files
          .map(file -> subfolder + "/" + file.getFileName())
          .filter(name -> name.endsWith(ending))
          .sorted()
          .toList();
    }
  }

  Map<String, JsonNode> examples() throws IOException {
    Map<String, JsonNode> examples = new TreeMap<>();
    for (String name : names("examples", ".json")) {
      examples.put(name.substring("examples/".length()), content(name));
    }
    return examples;
  }

  static String yaml(JsonNode document) throws IOException {
    return YAML.writeValueAsString(document);
  }

  private static ObjectMapper strict(ObjectMapper mapper) {
    return mapper
        .enable(JsonParser.Feature.STRICT_DUPLICATE_DETECTION)
        .enable(DeserializationFeature.FAIL_ON_TRAILING_TOKENS);
  }

  private static YAMLFactory yamlFactory() {
    return YAMLFactory.builder()
        .disable(YAMLGenerator.Feature.WRITE_DOC_START_MARKER)
        .disable(YAMLGenerator.Feature.SPLIT_LINES)
        .enable(YAMLGenerator.Feature.MINIMIZE_QUOTES)
        .stringQuotingChecker(new NumbersAndDatesQuoted())
        .build();
  }

  /** Readers of YAML 1.1 take plain dates and times for something else than text. */
  private static final class NumbersAndDatesQuoted extends StringQuotingChecker.Default {
    private static final long serialVersionUID = 1L;

    @Override
    public boolean needToQuoteValue(String value) {
      return super.needToQuoteValue(value) || value.matches("[-+.]?[0-9].*");
    }
  }
}
