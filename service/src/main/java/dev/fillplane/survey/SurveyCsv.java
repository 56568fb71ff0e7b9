package dev.fillplane.survey;

import dev.fillplane.finding.Findings;
import dev.fillplane.finding.Place;
import dev.fillplane.finding.Stopped;
import dev.fillplane.quantity.Amount;
import dev.fillplane.quantity.Dimension;
import dev.fillplane.quantity.UnitSystem;
import java.util.List;
import java.util.Optional;

/**
 * Reads a table of text to a survey.
 *
 * <p>The first line with text names the columns, in any order and case: {@code point}, {@code x},
 * {@code y} and one of {@code reading} and {@code elevation}; beside readings also {@code setup}
 * (one setup without it) and {@code benchmark}, which holds the known elevation of the point of its
 * row where it has one. x and y may be empty together for a turning point off the floor. Lengths on
 * plan are metres or feet, heights millimetres or inches, see {@link CsvNumber}; see {@link
 * CsvText} for separators.
 *
 * <p>Places of findings are {@code #/lines/7/reading}: line 7 of the text, counted from 1, and the
 * column. All errors are found at once, but reading stops after {@link #MOST_ERRORS}.
 */
public final class SurveyCsv {

  /** Most rows that are read. */
  public static final int MOST_ROWS = 250_000;

  /** After so many errors the rest is not read. */
  static final int MOST_ERRORS = 1_000;

  /** Readings of this size and less are hardly ever millimetres below a laser. */
  private static final double SMALL = 0.010;

  private final CsvText text;
  private final UnitSystem units;
  private final Findings findings;
  private int rows;

  private SurveyCsv(CsvText text, UnitSystem units, Findings findings) {
    this.text = text;
    this.units = units;
    this.findings = findings;
  }

  /**
   * The survey that {@code text} tells in {@code units}.
   *
   * @throws dev.fillplane.finding.FindingsException with every place that cannot be read
   */
  public static SurveyImport read(String text, UnitSystem units) {
    Findings findings = new Findings();
    Survey survey = new SurveyCsv(new CsvText(text, findings), units, findings).read();
    findings.throwIfErrors();
    warnOfSmallReadings(survey, findings);
    return new SurveyImport(survey, findings.warnings());
  }

  /** What it returns counts only if there is no error. */
  private Survey read() {
    Optional<CsvText.Row> first = text.next();
    CsvSurvey survey = new CsvSurvey(findings);
    if (first.isPresent()) {
      CsvHeader header = CsvHeader.read(first.get(), findings);
      if (!findings.hasErrors()) {
        read(header, survey);
      }
    }
    if (rows == 0 && !findings.hasErrors()) {
      findings.error("csv-empty", Place.root().at("lines"));
    }
    return survey.survey();
  }

  private void read(CsvHeader header, CsvSurvey survey) {
    CsvCells cells = new CsvCells(header, text, units, findings);
    Optional<CsvText.Row> row = text.next();
    while (row.isPresent() && findings.size() < MOST_ERRORS) {
      Stopped.ifInterrupted();
      if (++rows > MOST_ROWS) {
        findings.error("csv-too-many", row.get().place(), "what", "rows", "limit", MOST_ROWS);
        return;
      }
      if (header.fits(row.get())) {
        add(row.get(), header, cells, survey);
      }
      row = text.next();
    }
  }

  private static void add(CsvText.Row row, CsvHeader header, CsvCells cells, CsvSurvey survey) {
    String point = cells.name(row, CsvColumn.POINT);
    if (header.has(CsvColumn.ELEVATION)) {
      double x = cells.number(row, CsvColumn.X);
      double y = cells.number(row, CsvColumn.Y);
      survey.add(row, new KnownPoint(point, x, y, cells.number(row, CsvColumn.ELEVATION)));
      return;
    }
    String setup = header.has(CsvColumn.SETUP) ? cells.name(row, CsvColumn.SETUP) : "1";
    Reading reading =
        new Reading(
            point,
            cells.numberIfTold(row, CsvColumn.X),
            cells.numberIfTold(row, CsvColumn.Y),
            cells.number(row, CsvColumn.READING));
    boolean xTold = !header.cell(row, CsvColumn.X).isEmpty();
    boolean yTold = !header.cell(row, CsvColumn.Y).isEmpty();
    survey.add(row, setup, reading, xTold == yTold);
    cells
        .numberIfTold(row, CsvColumn.BENCHMARK)
        .ifPresent(elevation -> survey.add(row, new Benchmark(point, elevation)));
  }

  private static void warnOfSmallReadings(Survey survey, Findings findings) {
    double largest =
        survey.setups().stream()
            .map(Setup::readings)
            .flatMap(List::stream)
            .mapToDouble(reading -> Math.abs(reading.reading()))
            .max()
            .orElse(Double.POSITIVE_INFINITY);
    if (largest <= SMALL) {
      findings.warning(
          "csv-readings-small",
          Place.root().at("survey"),
          "largest",
          Amount.of(largest, Dimension.HEIGHT));
    }
  }
}
