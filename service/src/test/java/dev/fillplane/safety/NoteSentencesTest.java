package dev.fillplane.safety;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.fillplane.heat.MoistureVerdict;
import dev.fillplane.room.FeatureKind;
import dev.fillplane.room.Substrate;
import java.io.IOException;
import java.io.InputStreamReader;
import java.io.Reader;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Optional;
import java.util.Properties;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** Every note has a sentence that mentions only what the note knows, and all that it knows. */
class NoteSentencesTest {

  private static final Pattern PLACEHOLDER = Pattern.compile("\\{(\\w+)\\}");

  @Test
  void sentencesMentionTheValuesOfTheirNotes() throws IOException {
    Properties sentences = sentences();
    Set<String> codes = new TreeSet<>();
    for (Note note : all()) {
      codes.add(note.code());
      String sentence = sentences.getProperty(note.code());
      assertTrue(sentence != null, note.code());
      Set<String> mentioned =
          PLACEHOLDER
              .matcher(sentence)
              .results()
              .map((MatchResult match) -> match.group(1))
              .collect(Collectors.toCollection(TreeSet::new));
      assertEquals(new TreeSet<>(note.values().keySet()), mentioned, note.code());
    }
    assertEquals(37, codes.size());
  }

  /** Jobs that between them bring up every note. */
  private static List<Note> all() {
    return Stream.of(
            Jobs.job().room("hall", Substrate.WOOD, 1970).grind(1).air(5).rails(1).depths(.03, .03),
            Jobs.job().ventilated(Optional.of(false)).air(35).gypsum(),
            Jobs.job().ventilated(Optional.empty()).roomOfUnknown("hall"),
            Jobs.job().room("hall", Substrate.WOOD, 2015).joistSpan(4).allowance(40),
            Jobs.job().allowance(1).solvents().flames().heater(Heater.UNFLUED),
            Jobs.job().heating(FloorHeating.ON).air(33).humidity(0.6).moisture(17, 0.6),
            Jobs.job()
                .heating(FloorHeating.OFF)
                .base(BaseKind.values())
                .grind(40)
                .slabMoisture(MoistureVerdict.NO_GO),
            Jobs.job()
                .feature(FeatureKind.DRAIN)
                .feature(FeatureKind.CABLE)
                .feature(FeatureKind.MOVING_JOINT))
        .flatMap(job -> SafetyNotes.of(job.input()).stream())
        .toList();
  }

  private static Properties sentences() throws IOException {
    Properties sentences = new Properties();
    try (Reader reader =
        new InputStreamReader(
            NoteSentencesTest.class.getResourceAsStream("/dev/fillplane/web/sentences.properties"),
            StandardCharsets.UTF_8)) {
      sentences.load(reader);
    }
    return sentences;
  }
}
