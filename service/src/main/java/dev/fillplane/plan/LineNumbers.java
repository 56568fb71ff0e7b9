package dev.fillplane.plan;

import dev.fillplane.finding.Findings;
import dev.fillplane.finding.Place;
import dev.fillplane.flatness.FNumber;
import dev.fillplane.flatness.FNumberCheck;
import dev.fillplane.flatness.FNumberClass;
import dev.fillplane.flatness.FNumberPair;
import dev.fillplane.flatness.FNumberRules;
import dev.fillplane.flatness.FNumbers;
import dev.fillplane.flatness.MeasuredLine;
import dev.fillplane.flatness.Passes;
import java.util.Optional;
import java.util.OptionalDouble;

/** The F-numbers of measured lines, where they apply, and what they mean for a class of floors. */
final class LineNumbers {

  private static final String INAPPLICABLE = "f-numbers-do-not-apply";
  private static final int TEN_FEET = 10;
  private static final Place ROOT = Place.root();

  private final FlatnessCheckRequest request;
  private final Findings findings;
  private final LineSections sections;
  private final SectionNumbers flatness = new SectionNumbers();
  private final SectionNumbers levelness = new SectionNumbers();
  private final FNumberPair[] lines;
  private boolean stands;

  private LineNumbers(FlatnessCheckRequest request, Findings findings) {
    this.request = request;
    this.findings = findings;
    this.sections = new LineSections(request);
    this.lines = new FNumberPair[request.lines().size()];
  }

  /** Reckons the numbers of a request whose lines and rooms are checked. */
  static LineNumbers of(FlatnessCheckRequest request, Findings findings) {
    LineNumbers numbers = new LineNumbers(request, findings);
    numbers.warnOfTheSection();
    int[] differences = new int[numbers.lines.length];
    for (int line = 0; line < differences.length; line++) {
      boolean applies = numbers.reckon(line);
      differences[line] = applies ? request.lines().get(line).elevations().length - TEN_FEET : 0;
    }
    numbers.stands = new SectionCheck(numbers.sections, request, findings).check(differences);
    return numbers;
  }

  /** The numbers of one line. */
  FNumberPair line(int line) {
    return lines[line];
  }

  /** Those of all lines together, where they apply. */
  Optional<FNumberPair> combined() {
    FNumberPair pair = new FNumberPair(flatness.combined(), levelness.combined());
    boolean any = pair.ff().isPresent() || pair.fl().isPresent();
    return any ? Optional.of(pair) : Optional.empty();
  }

  /** Holds them against a class, with a warning for each number that is too low. */
  FNumberCheck against(FNumberClass asked) {
    boolean low = isLow("FF", asked.ff(), asked.localFf(), flatness);
    low |= isLow("FL", asked.fl(), asked.localFl(), levelness);
    boolean told =
        flatness.combined().isPresent()
            && (request.suspended() || levelness.combined().isPresent());
    if (!stands || !(told || low)) {
      return new FNumberCheck(asked, Passes.UNCLEAR);
    }
    return new FNumberCheck(asked, low ? Passes.OVER : Passes.WITHIN);
  }

  private boolean reckon(int index) {
    MeasuredLine line = request.lines().get(index);
    Place place = ROOT.at("lines").at(index);
    Optional<String> against = FNumberRules.against(line.spacing(), line.elevations().length);
    against.ifPresent(why -> warn(place, "FF and FL", "line " + line.id() + " " + why));
    boolean applies = against.isEmpty() && !FNumberRules.isTooSmall(sections.area(index));
    lines[index] =
        new FNumberPair(
            applies
                ? told(FNumbers.flatness(line.elevations()), flatness, index)
                : OptionalDouble.empty(),
            applies && !request.suspended()
                ? told(FNumbers.levelness(line.elevations()), levelness, index)
                : OptionalDouble.empty());
    return against.isEmpty();
  }

  private OptionalDouble told(Optional<FNumber> number, SectionNumbers all, int line) {
    if (number.isEmpty()) {
      return OptionalDouble.empty();
    }
    all.add(sections.room(line), sections.area(line), number.get());
    double value = number.get().value();
    if (value >= FNumbers.MOST) {
      Place place = ROOT.at("lines").at(line);
      findings.warning("f-number-capped", place, "most", (int) FNumbers.MOST);
    }
    return OptionalDouble.of(value);
  }

  private void warnOfTheSection() {
    String small = "the section is smaller than 320 ft2 (30 m2)";
    if (FNumberRules.isTooSmall(request.area())) {
      warn(ROOT.at("area"), "FF and FL", small);
    }
    for (int room = 0; room < request.rooms().size() && request.area().isEmpty(); room++) {
      OptionalDouble area = OptionalDouble.of(sections.polygon(room).getArea());
      if (sections.linesIn(room).length > 0 && FNumberRules.isTooSmall(area)) {
        warn(ROOT.at("rooms").at(room), "FF and FL", small);
      }
    }
    if (request.suspended()) {
      warn(ROOT.at("suspended"), "FL", "a suspended deck sags after its forms are struck");
    }
  }

  private void warn(Place place, String which, String why) {
    findings.warning(INAPPLICABLE, place, "which", which, "why", why);
  }

  private boolean isLow(String name, double overall, double local, SectionNumbers numbers) {
    double told = numbers.combined().orElse(FNumbers.MOST);
    boolean low = told < overall || numbers.least() < local;
    if (low) {
      findings.warning(
          "below-f-numbers",
          ROOT.at("limit"),
          "name",
          name,
          "told",
          SectionNumbers.text(told),
          "overall",
          SectionNumbers.text(overall),
          "least",
          SectionNumbers.text(numbers.least()),
          "local",
          SectionNumbers.text(local));
    }
    return low;
  }
}
