package dev.fillplane.render;

import dev.fillplane.plan.Computed;
import dev.fillplane.plan.Plan;
import dev.fillplane.plan.PlanRequest;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;

/**
 * The sheet of a pour to print and take to the floor, as HTML that is well-formed XML too: the map
 * with the numbers that matter; the order of pouring; what is set out before; what can hurt and
 * what to do when something goes wrong. Every text of a caller is escaped by {@link Markup}; the
 * page loads nothing and runs nothing. The same plan gives the same text.
 */
public final class PourPage {

  private static final String STYLE = style();

  /** Frame and padding of the verdict, left and right together, mm. */
  private static final double VERDICT_EDGES = 9;

  private static final String BOXED =
      Written.BOX
          + " stands for a letter that this print has no font for. The names are whole on the same"
          + " sheet as a web page (HTML) and in the plan (JSON).";

  private final PageInput input;
  private final boolean paged;
  private final boolean boxed;
  private final Markup html = new Markup();

  private PourPage(PageInput input, boolean paged, boolean boxed) {
    this.input = input;
    this.paged = paged;
    this.boxed = boxed;
  }

  /**
   * Writes the sheet as a page for a browser.
   *
   * @param request as it was planned
   * @param plan its answer
   * @param paper to print on
   * @param wording makes the sentences of notes, remarks and warnings
   */
  public static String write(PlanRequest request, Plan plan, Paper paper, Wording wording) {
    PageInput input = PageInput.of(request, plan, paper, wording);
    return "<!DOCTYPE html>\n" + new PourPage(input, false, false).document();
  }

  /**
   * The same to be laid out in pages, with its foot on every one; without a document type. Its foot
   * says so where the fonts of a sheet lack letters.
   */
  static Written paged(PageInput input) {
    Written page = Written.of(new PourPage(input, true, false).document().toString());
    return page.isWhole()
        ? page
        : Written.of(new PourPage(input, true, true).document().toString());
  }

  private Markup document() {
    html.open("html", "xmlns", "http://www.w3.org/1999/xhtml", "lang", "en");
    head();
    html.open("body", "class", paged ? "paged" : "flowing");
    if (paged) {
      foot("div");
    }
    page(FirstPage.isTurned(input) ? "first turned" : "first", FirstPage.write(input));
    page("order", OrderPage.write(input));
    page("set-out", SetOutPage.write(input));
    page("care", CarePage.write(input));
    return html.close("body").close("html");
  }

  private void head() {
    html.open("head").leaf("meta", "charset", "utf-8");
    html.text("title", "Pour sheet: " + input.name());
    html.leaf("meta", "name", "description", "content", "How to pour " + input.name());
    html.leaf("meta", "name", "subject", "content", "How to pour " + input.name());
    html.leaf("meta", "name", "viewport", "content", "width=device-width, initial-scale=1");
    html.style(STYLE + sizes());
    html.close("head");
  }

  /** What is turned is as wide as told, since a layout takes the width of its first page. */
  private String sizes() {
    Paper paper = input.paper();
    String wide = Markup.number(paper.turnedAcross() - VERDICT_EDGES);
    return "@page { size: "
        + paper.css()
        + "; }\n@page turned { size: "
        + paper.css()
        + " landscape; }\n.turned .verdict, .turned .five { width: "
        + wide
        + "mm; }\n";
  }

  private void page(String kind, Markup content) {
    html.open("section", "class", "page " + kind).add(content);
    if (!paged) {
      foot("footer");
    }
    html.close("section");
  }

  private void foot(String element) {
    Computed computed = input.plan().computed();
    html.open(element, "class", "foot");
    html.text("p", input.name() + ". " + TitleBlock.CAUTION);
    html.text(
        "p",
        "Fillplane "
            + computed.version()
            + ", from what was told in request "
            + computed.inputDigest()
            + "; "
            + input.figures().named()
            + ".");
    if (boxed) {
      html.text("p", BOXED);
    }
    html.close(element);
  }

  private static String style() {
    try (InputStream in = PourPage.class.getResourceAsStream("pour-page.css")) {
      return new String(in.readAllBytes(), StandardCharsets.UTF_8);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
