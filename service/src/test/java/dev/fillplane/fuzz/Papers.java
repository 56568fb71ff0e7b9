package dev.fillplane.fuzz;

import java.io.IOException;
import java.io.StringReader;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Pattern;
import javax.xml.parsers.DocumentBuilderFactory;
import javax.xml.parsers.ParserConfigurationException;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVRecord;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.w3c.dom.Document;
import org.w3c.dom.NamedNodeMap;
import org.w3c.dom.Node;
import org.w3c.dom.NodeList;
import org.xml.sax.ErrorHandler;
import org.xml.sax.InputSource;
import org.xml.sax.SAXException;
import org.xml.sax.SAXParseException;

/** What holds of pictures, pages, sheets and tables, whatever is written in them. */
final class Papers {

  private static final Pattern NO_NUMBER = Pattern.compile("NaN|Infinity");

  /** Attributes that hold numbers and nothing else. */
  private static final Set<String> NUMBERS =
      Set.of(
          "d",
          "x",
          "y",
          "x1",
          "y1",
          "x2",
          "y2",
          "cx",
          "cy",
          "r",
          "width",
          "height",
          "viewBox",
          "points",
          "transform",
          "font-size",
          "stroke-width");

  private static final Pattern FORMULA =
      Pattern.compile("(?s)[\\s\\p{Z}\\p{Cf}]*([=+@\uFF1D\uFF0B\uFF0D\uFF20].*|-.*)|[\t\r].*");

  private static final Pattern NEGATIVE = Pattern.compile("-[0-9.,]+");

  private Papers() {}

  static Optional<String> broken(Reply reply) {
    return switch (reply.mediaType()) {
      case "image/svg+xml" -> markup(reply.text());
      case "text/html" -> markup(reply.text());
      case "text/csv" -> table(reply.text());
      case "application/pdf" -> sheet(reply.body());
      default -> Optional.of("nobody knows " + reply.mediaType());
    };
  }

  private static Optional<String> markup(String text) {
    try {
      Document document = xml(text);
      for (String element : List.of("script", "iframe", "object", "embed", "foreignObject")) {
        if (document.getElementsByTagName(element).getLength() > 0) {
          return Optional.of("it holds an element " + element);
        }
      }
      return isNumberless(document)
          ? Optional.of("it holds a number that is none")
          : Optional.empty();
    } catch (SAXException e) {
      return Optional.of("it is no XML: " + e.getMessage());
    }
  }

  private static boolean isNumberless(Document document) {
    NodeList elements = document.getElementsByTagName("*");
    for (int i = 0; i < elements.getLength(); i++) {
      NamedNodeMap attributes = elements.item(i).getAttributes();
      for (int k = 0; k < attributes.getLength(); k++) {
        Node attribute = attributes.item(k);
        if (NUMBERS.contains(attribute.getNodeName())
            && NO_NUMBER.matcher(attribute.getNodeValue()).find()) {
          return true;
        }
      }
    }
    return false;
  }

  /** Strictly; a page names its type in a line of its own. */
  static Document xml(String text) throws SAXException {
    try {
      var builder = DocumentBuilderFactory.newInstance().newDocumentBuilder();
      builder.setErrorHandler(new Strict());
      String bare = text.replaceFirst("(?i)<!doctype html>", "");
      return builder.parse(new InputSource(new StringReader(bare)));
    } catch (ParserConfigurationException | IOException e) {
      throw new IllegalStateException(e);
    }
  }

  /** Throws, and prints nothing. */
  private static final class Strict implements ErrorHandler {
    @Override
    public void warning(SAXParseException e) {}

    @Override
    public void error(SAXParseException e) throws SAXParseException {
      throw e;
    }

    @Override
    public void fatalError(SAXParseException e) throws SAXParseException {
      throw e;
    }
  }

  private static Optional<String> table(String text) {
    try {
      List<CSVRecord> rows = CSVFormat.RFC4180.parse(new StringReader(text)).getRecords();
      for (CSVRecord row : rows) {
        if (row.size() != rows.get(0).size()) {
          return Optional.of("a row of another length: " + row);
        }
        for (String cell : row) {
          if (isFormula(cell)) {
            return Optional.of("a cell that is a formula: " + cell);
          }
        }
      }
      return rows.isEmpty() ? Optional.of("a table without rows") : Optional.empty();
    } catch (IOException e) {
      return Optional.of("it is no table: " + e.getMessage());
    }
  }

  /** Whether a spreadsheet would compute a text. */
  static boolean isFormula(String cell) {
    return FORMULA.matcher(cell).matches() && !NEGATIVE.matcher(cell).matches();
  }

  private static Optional<String> sheet(byte[] body) {
    try (PDDocument document = Loader.loadPDF(body)) {
      String text = new PDFTextStripper().getText(document);
      return text.isBlank() ? Optional.of("a sheet without text") : Optional.empty();
    } catch (IOException e) {
      return Optional.of("it is no PDF: " + e.getMessage());
    }
  }
}
