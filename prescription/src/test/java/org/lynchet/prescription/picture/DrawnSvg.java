package org.lynchet.prescription.picture;

import java.io.ByteArrayInputStream;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import javax.xml.parsers.DocumentBuilderFactory;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.w3c.dom.NodeList;

/** Reads an SVG back with the JDK's XML parser, document types refused. */
final class DrawnSvg {
  private final Document document;

  private DrawnSvg(Document document) {
    this.document = document;
  }

  static DrawnSvg of(FieldMap map) throws Exception {
    DocumentBuilderFactory factory = DocumentBuilderFactory.newInstance();
    factory.setFeature("http://apache.org/xml/features/disallow-doctype-decl", true);
    factory.setNamespaceAware(true);
    byte[] bytes = map.svg().getBytes(StandardCharsets.UTF_8);
    return new DrawnSvg(factory.newDocumentBuilder().parse(new ByteArrayInputStream(bytes)));
  }

  Element root() {
    return document.getDocumentElement();
  }

  /** The texts of a layer, in order. */
  List<String> texts(String layer) {
    return elements(layer, "text").stream().map(Element::getTextContent).toList();
  }

  /** The elements of a name in a layer; none if the layer is not there. */
  List<Element> elements(String layer, String name) {
    List<Element> found = new ArrayList<>();
    NodeList groups = document.getElementsByTagNameNS("*", "g");
    for (int i = 0; i < groups.getLength(); i++) {
      if (groups.item(i) instanceof Element group && group.getAttribute("id").equals(layer)) {
        NodeList elements = group.getElementsByTagNameNS("*", name);
        for (int j = 0; j < elements.getLength(); j++) {
          found.add((Element) elements.item(j));
        }
      }
    }
    return found;
  }

  /** All numbers of a path: x, y, x, y, ... */
  static double[] numbers(Element path) {
    return Arrays.stream(path.getAttribute("d").split("[^0-9.-]+"))
        .filter(text -> !text.isEmpty())
        .mapToDouble(Double::parseDouble)
        .toArray();
  }
}
