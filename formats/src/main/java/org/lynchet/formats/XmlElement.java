package org.lynchet.formats;

import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * One element of an XML text.
 *
 * @param name its name without a prefix
 * @param attributes its attributes by name without a prefix, in no order
 * @param children the elements in it, in the file's order
 * @param text the text directly in it, its pieces joined, without blanks at the ends
 * @param line the line on which its start tag ends, from 1
 */
public record XmlElement(
    String name, Map<String, String> attributes, List<XmlElement> children, String text, int line) {

  /** Copies the map and the list. */
  public XmlElement {
    attributes = Map.copyOf(attributes);
    children = List.copyOf(children);
  }

  /** The value of an attribute; empty text if it is not there. */
  public String attribute(String attribute) {
    return attributes.getOrDefault(attribute, "");
  }

  /** The children of one name, in order. */
  public List<XmlElement> children(String child) {
    return children.stream().filter(c -> c.name.equals(child)).toList();
  }

  /** The first child of one name, if there is one. */
  public Optional<XmlElement> findChild(String child) {
    return children.stream().filter(c -> c.name.equals(child)).findFirst();
  }
}
