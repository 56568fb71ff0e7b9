package dev.fillplane.web;

import dev.fillplane.finding.Findings;
import dev.fillplane.finding.FindingsException;
import dev.fillplane.finding.Place;
import dev.fillplane.quantity.UnitSystem;
import dev.fillplane.survey.SurveyCsv;
import dev.fillplane.web.json.Answer;
import dev.fillplane.web.json.Json;
import io.javalin.http.Context;
import java.nio.ByteBuffer;
import java.nio.CharBuffer;
import java.nio.charset.CharsetDecoder;
import java.nio.charset.CoderResult;
import java.nio.charset.StandardCharsets;
import java.util.Locale;
import java.util.Set;

/** Turns a table of text into a survey to put into a request. */
final class SurveyImports {

  static final String PATH = "/v1/survey-imports";

  private static final int BLOCK = 8_192;

  private final Intake intake;

  SurveyImports(Intake intake) {
    this.intake = intake;
  }

  void handle(Context context) {
    Accepted.check(context, Calculation.JSON);
    if (!Set.of("units").containsAll(context.queryParamMap().keySet())) {
      throw Refusal.of(Problem.Kind.BAD_REQUEST, "The only parameter here is units.");
    }
    UnitSystem units = UnitsParameter.of(context);
    Body.check(context, Calculations.CSV);
    checkCharset(Body.mediaType(context));
    intake.answer(context, Calculations.CSV, Calculation.JSON, body -> answer(body, units));
  }

  private static void checkCharset(String type) {
    String rest = type.toLowerCase(Locale.ROOT).replaceAll("[\\s\"]", "") + ";";
    if (rest.contains(";charset=") && !rest.contains(";charset=utf-8;")) {
      throw Refusal.of(Problem.Kind.UNSUPPORTED_MEDIA_TYPE, "Send the text as UTF-8.");
    }
  }

  private static byte[] answer(byte[] body, UnitSystem units) {
    try {
      return Json.bytes(Answer.of(units, SurveyCsv.read(text(body), units)), units);
    } catch (FindingsException e) {
      throw Refusal.of(e, units);
    }
  }

  /** Other encodings are refused, since they would spoil names unseen. */
  private static String text(byte[] body) {
    ByteBuffer bytes = ByteBuffer.wrap(body);
    CharsetDecoder decoder = StandardCharsets.UTF_8.newDecoder();
    // By blocks, since a large text at two bytes a sign does not fit beside its bytes.
    CharBuffer block = CharBuffer.allocate(BLOCK);
    CoderResult result = CoderResult.OVERFLOW;
    while (result.isOverflow()) {
      result = decoder.decode(bytes, block.clear(), true);
    }
    if (result.isError()) {
      Findings findings = new Findings();
      findings.error("csv-encoding", Place.root().at("lines").at(line(body, bytes.position())));
      throw new FindingsException(findings.errors());
    }
    return new String(body, StandardCharsets.UTF_8);
  }

  private static int line(byte[] body, int end) {
    int line = 1;
    for (int i = 0; i < end; i++) {
      boolean ends = body[i] == '\n' || (body[i] == '\r' && (i + 1 >= end || body[i + 1] != '\n'));
      line += ends ? 1 : 0;
    }
    return line;
  }
}
