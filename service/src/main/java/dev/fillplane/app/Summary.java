package dev.fillplane.app;

import dev.fillplane.client.generated.model.Bags;
import dev.fillplane.client.generated.model.DepthSummary;
import dev.fillplane.client.generated.model.Driver;
import dev.fillplane.client.generated.model.Grinding;
import dev.fillplane.client.generated.model.Mix;
import dev.fillplane.client.generated.model.Money;
import dev.fillplane.client.generated.model.Option;
import dev.fillplane.client.generated.model.Plan;
import dev.fillplane.client.generated.model.PlanRequest;
import dev.fillplane.client.generated.model.PouredBay;
import dev.fillplane.client.generated.model.Ribbon;
import dev.fillplane.client.generated.model.RoomsPlane;
import dev.fillplane.client.generated.model.SafetyNote;
import dev.fillplane.client.generated.model.Saving;
import dev.fillplane.client.generated.model.Trouble;
import java.io.PrintStream;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;

/** Tells a plan in the order in which a person on site needs it. */
final class Summary {

  private final Plan plan;
  private final PlanRequest request;
  private final boolean metric;

  Summary(Plan plan, PlanRequest request) {
    this.plan = plan;
    this.request = request;
    this.metric = plan.getUnits().equals("metric");
  }

  void print(PrintStream out) {
    out.println(plan.getReference());
    out.println();
    floor(out);
    options(out);
    supplies(out);
    mix(out);
    pour(out);
    new BatchSummary(plan.getPour().getBatches(), metric).print(out);
    troubles(out);
    watch(out);
    out.println();
    out.println("This is an estimate. Local code, the data sheet and licensed practice decide.");
  }

  private void floor(PrintStream out) {
    DepthSummary depth = plan.getDepth();
    line(
        out,
        "High spot",
        "%s at x %.1f, y %.1f",
        height(depth.getHighest().getElevation()),
        depth.getHighest().getX(),
        depth.getHighest().getY());
    line(
        out,
        "Low spot",
        "%s deep at x %.1f, y %.1f",
        height(depth.getDeepest().getDepth()),
        depth.getDeepest().getX(),
        depth.getDeepest().getY());
    for (RoomsPlane plane : plan.getTarget().getPlanes()) {
      line(
          out,
          "Target",
          "%s at %s%s",
          plan.getTarget().getShape(),
          height(plane.getElevation()),
          plan.getTarget().getPlanes().size() == 1
              ? ""
              : " in " + String.join(", ", plane.getRooms()));
    }
    line(
        out,
        "",
        "mean depth %s over %.1f %s",
        height(depth.getMean()),
        depth.getPouredArea(),
        area());
  }

  private String area() {
    return metric ? "m2" : "sq ft";
  }

  private void options(PrintStream out) {
    line(
        out,
        "Flat already?",
        "gap %s under a straightedge, limit %s: %s",
        height(plan.getFlatness().getBefore().getGap()),
        height(plan.getFlatness().getLimit().getGap()),
        plan.getFlatness().getBefore().getVerdict());
    for (Option option : plan.getOptions()) {
      line(
          out,
          "  " + option.getName().replace('-', ' '),
          "%d bags, %.1f %s to grind, %.1f hours of work%s; then %s",
          option.getBags(),
          option.getGrindArea(),
          area(),
          option.getMinutes() / 60,
          option.getCost() == null ? "" : ", " + money(option.getCost()),
          option.getPasses());
    }
    grinding(out);
  }

  private static String money(Money money) {
    return money.getAmount() + (money.getCurrency() == null ? "" : " " + money.getCurrency());
  }

  private void grinding(PrintStream out) {
    Grinding grinding = plan.getGrinding();
    if (grinding.getArea() > 0) {
      line(
          out,
          "Grind first",
          "%.1f %s in %d place(s), by up to %s",
          grinding.getArea(),
          area(),
          grinding.getAreas().size(),
          height(grinding.getDeepest()));
    }
    for (Saving saving : grinding.getSavings()) {
      line(
          out,
          "  could be ground",
          "%.1f %s by up to %s: saves %d bag(s)",
          saving.getArea(),
          area(),
          height(saving.getHeight()),
          saving.getBags());
    }
  }

  private void supplies(PrintStream out) {
    Bags bags = plan.getQuantities().getBags();
    line(
        out,
        "Bags",
        "order %d (likely %d; 10 %% chance that %d do, 90 %% that %d do)",
        bags.getOrder(),
        bags.getLikely(),
        bags.getP10(),
        bags.getP90());
    line(out, "", "about %.0f left over; the range comes from %s", bags.getLeftOver(), drivers());
    line(
        out,
        "Primer",
        "%s in %d coat(s)",
        liquid(plan.getQuantities().getPrimer().getLiquid()),
        plan.getQuantities().getPrimer().getCoats());
  }

  /** Sources of the range that make a hundredth of it or more, the largest first. */
  private String drivers() {
    return plan.getQuantities().getDrivers().stream()
        .filter(driver -> driver.getShare() >= 0.01)
        .sorted(Comparator.comparing(Driver::getShare).reversed())
        .map(
            driver ->
                String.format(
                    Locale.ROOT, "%s %.0f %%", driver.getSource(), 100 * driver.getShare()))
        .collect(Collectors.joining(", "));
  }

  private void mix(PrintStream out) {
    Mix mix = plan.getMix();
    line(
        out,
        "Water",
        "%s for each batch; %s in all",
        liquid(mix.getWaterPerBatch()),
        liquid(plan.getQuantities().getMixWater()));
    Double needed = mix.getNeeded().getWaterTemperature();
    line(
        out,
        "Mix",
        "%s with water of %s%s",
        temperature(mix.getMixTemperature()),
        temperature(request.getConditions().getWater()),
        needed == null ? "" : "; water of " + temperature(needed) + " would suit the sheet");
    line(
        out,
        "Time",
        "flows %.0f min, an edge heals %.0f min from first water",
        mix.getWorkingTime(),
        mix.getHealingTime());
  }

  private void pour(PrintStream out) {
    line(
        out,
        "Wet edge",
        "%s with %d people and %d mixer(s), %.0f min of pouring",
        plan.getPour().getVerdict(),
        plan.getPour().getCrew().getPeople(),
        plan.getPour().getCrew().getMixers(),
        plan.getPour().getMinutes());
    plan.getPour().getReasons().forEach(reason -> line(out, "", "%s", reason.getText()));
    plan.getPour()
        .getChanges()
        .forEach(change -> line(out, "", "then %s: %s", change.getVerdict(), change.getText()));
    out.println("Order of pouring");
    for (PouredBay bay : plan.getPour().getBays()) {
      List<Ribbon> ribbons = bay.getRibbons();
      if (!ribbons.isEmpty()) {
        line(
            out,
            "  " + bay.getRoom(),
            "ribbons %d to %d, minute %.0f to %.0f",
            ribbons.get(0).getOrder(),
            ribbons.get(ribbons.size() - 1).getOrder(),
            ribbons.get(0).getStart(),
            ribbons.get(ribbons.size() - 1).getEnd());
      }
    }
    line(
        out,
        "Set up",
        "%d depth pins, %d rails, %d dams",
        plan.getPins().size(),
        plan.getRails().size(),
        plan.getQuantities().getDams().size());
  }

  private void troubles(PrintStream out) {
    if (!plan.getTroubles().getCases().isEmpty()) {
      out.println("If it goes wrong");
    }
    for (Trouble trouble : plan.getTroubles().getCases()) {
      line(out, "  " + trouble.getCode().replace('-', ' '), "%s", trouble.getNow().getText());
    }
  }

  private void watch(PrintStream out) {
    out.println("What to watch");
    for (SafetyNote note : plan.getSafety()) {
      out.println("  " + note.getSeverity().toUpperCase(Locale.ROOT) + ": " + note.getText());
    }
    plan.getWarnings().forEach(warning -> out.println("  Note: " + warning.getDetail()));
  }

  private static void line(PrintStream out, String name, String format, Object... values) {
    out.printf(Locale.ROOT, "%-18s", name);
    out.printf(Locale.ROOT, format + "%n", values);
  }

  private String height(double value) {
    return String.format(Locale.ROOT, metric ? "%.1f mm" : "%.2f in", value);
  }

  private String liquid(double value) {
    return String.format(Locale.ROOT, metric ? "%.1f L" : "%.1f qt", value);
  }

  private String temperature(double value) {
    return String.format(Locale.ROOT, metric ? "%.0f C" : "%.0f F", value);
  }
}
