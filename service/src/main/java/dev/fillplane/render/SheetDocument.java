package dev.fillplane.render;

import java.io.IOException;
import java.io.StringReader;
import javax.xml.parsers.DocumentBuilderFactory;
import javax.xml.parsers.ParserConfigurationException;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.w3c.dom.NodeList;
import org.xml.sax.InputSource;
import org.xml.sax.SAXException;

/** A page of ours as a document to lay out; each picture says in words what it shows. */
final class SheetDocument {

  private static final String SVG = "http://www.w3.org/2000/svg";
  private static final String NO_DOCTYPE = "http://apache.org/xml/features/disallow-doctype-decl";

  private SheetDocument() {}

  /**
   * Reads a page.
   *
   * @param page well-formed, without a document type
   */
  static Document parse(String page) {
    try {
      DocumentBuilderFactory factory = DocumentBuilderFactory.newInstance();
      factory.setFeature(NO_DOCTYPE, true);
      factory.setNamespaceAware(true);
      Document document =
          factory.newDocumentBuilder().parse(new InputSource(new StringReader(page)));
      describe(document.getElementsByTagNameNS(SVG, "svg"));
      return document;
    } catch (ParserConfigurationException | SAXException | IOException e) {
      throw new IllegalStateException("a page of ours cannot be read", e);
    }
  }

  private static void describe(NodeList pictures) {
    for (int i = 0; i < pictures.getLength(); i++) {
      Element picture = (Element) pictures.item(i);
      String text = picture.getElementsByTagNameNS(SVG, "desc").item(0).getTextContent();
      picture.setAttribute("alt", text);
    }
  }
}
