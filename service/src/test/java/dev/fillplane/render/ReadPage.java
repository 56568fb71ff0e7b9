package dev.fillplane.render;

import java.io.StringReader;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import javax.xml.parsers.DocumentBuilderFactory;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.w3c.dom.Node;
import org.w3c.dom.NodeList;
import org.xml.sax.InputSource;

/** A pour page, read back. */
record ReadPage(Document document) {

  static final Wording WORDING = (code, values) -> sentence(code);

  static String sentence(String code) {
    return "Sentence of " + code + ".";
  }

  static String html(Planned planned) {
    return html(planned, Paper.usual(planned.request().units()));
  }

  static String html(Planned planned, Paper paper) {
    return PourPage.write(planned.request(), planned.plan(), paper, WORDING);
  }

  static ReadPage of(Planned planned) throws Exception {
    String html = html(planned);
    String start = "<!DOCTYPE html>\n";
    if (!html.startsWith(start)) {
      throw new AssertionError("no document type");
    }
    DocumentBuilderFactory factory = DocumentBuilderFactory.newInstance();
    factory.setNamespaceAware(true);
    InputSource source = new InputSource(new StringReader(html.substring(start.length())));
    return new ReadPage(factory.newDocumentBuilder().parse(source));
  }

  List<Element> all(String name) {
    return under(document.getDocumentElement(), name);
  }

  private static List<Element> under(Element parent, String name) {
    NodeList nodes = parent.getElementsByTagNameNS("*", name);
    List<Element> elements = new ArrayList<>();
    for (int i = 0; i < nodes.getLength(); i++) {
      elements.add((Element) nodes.item(i));
    }
    return elements;
  }

  List<String> texts(String name) {
    return all(name).stream().map(Element::getTextContent).toList();
  }

  List<String> kinds(String name) {
    return all(name).stream().map(element -> element.getAttribute("class")).toList();
  }

  String text() {
    return document.getDocumentElement().getTextContent();
  }

  /** Texts of elements of a name inside the first one of a class. */
  List<String> inside(String kind, String name) {
    return under(ofKind("*", kind).get(0), name).stream().map(Element::getTextContent).toList();
  }

  /** Texts of the divisions of a class, one blank between their words. */
  List<String> divisions(String kind) {
    return ofKind("div", kind).stream()
        .map(element -> element.getTextContent().strip().replaceAll("\\s+", " "))
        .toList();
  }

  /** The cells of the rows of a class in the table of a class. */
  List<List<String>> rows(String table, String kind) {
    List<List<String>> rows = new ArrayList<>();
    for (Element found : ofKind("table", table)) {
      for (Element row : under(found, "tr")) {
        if (isOf(row, kind)) {
          rows.add(cells(row));
        }
      }
    }
    return rows;
  }

  private static List<String> cells(Element row) {
    List<String> cells = new ArrayList<>();
    for (Node node = row.getFirstChild(); node != null; node = node.getNextSibling()) {
      if (node instanceof Element cell) {
        cells.add(cell.getTextContent());
      }
    }
    return cells;
  }

  private List<Element> ofKind(String name, String kind) {
    return all(name).stream().filter(element -> isOf(element, kind)).toList();
  }

  private static boolean isOf(Element element, String kind) {
    return Arrays.asList(element.getAttribute("class").split(" ", -1)).contains(kind);
  }
}
