package dev.fillplane.render;

import java.io.StringReader;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import javax.xml.parsers.DocumentBuilderFactory;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.w3c.dom.NodeList;
import org.xml.sax.InputSource;

/** A drawn map, read back. */
final class Picture {

  private final Document document;

  Picture(String svg) throws Exception {
    DocumentBuilderFactory factory = DocumentBuilderFactory.newInstance();
    factory.setFeature("http://apache.org/xml/features/disallow-doctype-decl", true);
    factory.setNamespaceAware(true);
    document = factory.newDocumentBuilder().parse(new InputSource(new StringReader(svg)));
  }

  static Picture of(Planned planned) throws Exception {
    return new Picture(DepthMap.draw(planned.request(), planned.plan()));
  }

  Element root() {
    return document.getDocumentElement();
  }

  List<Element> all(String name) {
    NodeList nodes = document.getElementsByTagNameNS("*", name);
    List<Element> elements = new ArrayList<>();
    for (int i = 0; i < nodes.getLength(); i++) {
      elements.add((Element) nodes.item(i));
    }
    return elements;
  }

  List<String> texts() {
    return all("text").stream().map(Element::getTextContent).toList();
  }

  /** Numbers of the viewBox. */
  double[] box() {
    return Arrays.stream(root().getAttribute("viewBox").split(" "))
        .mapToDouble(Double::parseDouble)
        .toArray();
  }
}
