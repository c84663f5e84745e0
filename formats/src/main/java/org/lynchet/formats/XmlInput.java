package org.lynchet.formats;

import java.io.Reader;
import java.nio.charset.CharacterCodingException;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import javax.xml.stream.XMLInputFactory;
import javax.xml.stream.XMLStreamConstants;
import javax.xml.stream.XMLStreamException;
import javax.xml.stream.XMLStreamReader;
import org.jspecify.annotations.Nullable;

/**
 * Reads an XML text into its elements, with nothing outside of the text taken in.
 *
 * <p>Document type declarations are refused, and with them every entity but the five of XML itself:
 * neither files nor addresses are opened, and nothing expands. Depth and number of elements are
 * limited, so that memory is.
 */
public final class XmlInput {
  /** The longest text taken, in bytes: a million vertices. */
  public static final int LIMIT_BYTES = 64 << 20;

  private static final int MAX_DEPTH = 64;

  private final String place;
  private final ElementBudget budget;

  private XmlInput(String place, ElementBudget budget) {
    this.place = place;
    this.budget = budget;
  }

  /**
   * The root element.
   *
   * @param place what the text is called in faults: its file
   * @throws FormatException if it is not well-formed, declares a document type, or is too large
   */
  public static XmlElement read(byte[] bytes, String place) throws FormatException {
    return read(bytes, place, new ElementBudget());
  }

  /**
   * The root element of one of several texts that belong together.
   *
   * @param place what the text is called in faults: its file
   * @param budget what the texts may hold together
   * @throws FormatException if it is not well-formed, declares a document type, or is too large
   */
  public static XmlElement read(byte[] bytes, String place, ElementBudget budget)
      throws FormatException {
    XmlInput input = new XmlInput(place, budget);
    if (bytes.length > LIMIT_BYTES) {
      throw input.fault(
          bytes.length + " bytes of XML", 1, "at most " + LIMIT_BYTES, "export one field only");
    }
    Reader text =
        XmlText.decoded(bytes)
            .orElseThrow(
                () -> input.fault("an encoding that is not known", 1, "UTF-8", "export it again"));
    try {
      return input.root(factory().createXMLStreamReader(text));
    } catch (XMLStreamException e) {
      if (e.getNestedException() instanceof CharacterCodingException) {
        // Text is decoded ahead of the parser: it does not know the line.
        throw new FormatException(
            new Fault("bytes that are not text as declared", place, "UTF-8", "export it again"));
      }
      int line = e.getLocation() == null ? 1 : Math.max(1, e.getLocation().getLineNumber());
      throw input.fault(
          "not well-formed XML: " + firstLine(e.getMessage()), line, "XML 1.0", "export it again");
    } catch (RuntimeException e) {
      // The JDK's reader answers some malformed bytes with unchecked exceptions.
      throw input.fault("not XML: " + firstLine(e.toString()), 1, "XML 1.0", "export it again");
    }
  }

  private static XMLInputFactory factory() {
    XMLInputFactory factory = XMLInputFactory.newDefaultFactory();
    factory.setProperty(XMLInputFactory.SUPPORT_DTD, false);
    factory.setProperty(XMLInputFactory.IS_SUPPORTING_EXTERNAL_ENTITIES, false);
    factory.setProperty(XMLInputFactory.IS_REPLACING_ENTITY_REFERENCES, false);
    return factory;
  }

  private XmlElement root(XMLStreamReader reader) throws XMLStreamException, FormatException {
    List<Open> path = new ArrayList<>();
    XmlElement last = null;
    while (reader.hasNext()) {
      switch (reader.next()) {
        case XMLStreamConstants.DTD, XMLStreamConstants.ENTITY_REFERENCE ->
            throw fault(
                "a document type or an entity",
                reader.getLocation().getLineNumber(),
                "XML without either",
                "take it out, or export the file again");
        case XMLStreamConstants.START_ELEMENT -> path.add(open(reader, path.size()));
        case XMLStreamConstants.CHARACTERS, XMLStreamConstants.CDATA ->
            append(path, reader.getText());
        case XMLStreamConstants.END_ELEMENT -> {
          last = path.remove(path.size() - 1).close();
          if (!path.isEmpty()) {
            path.get(path.size() - 1).children.add(last);
          }
        }
        default -> {
          // Comments, blanks and instructions to other programs say nothing here.
        }
      }
    }
    return whole(last);
  }

  private XmlElement whole(@Nullable XmlElement root) throws FormatException {
    if (root == null) {
      throw fault("no element in it", 1, "one root element", "export it again");
    }
    return root;
  }

  private static void append(List<Open> path, String text) {
    if (!path.isEmpty()) {
      path.get(path.size() - 1).text.append(text);
    }
  }

  private Open open(XMLStreamReader reader, int depth) throws FormatException {
    int line = reader.getLocation().getLineNumber();
    if (depth >= MAX_DEPTH || !budget.take()) {
      throw fault(
          depth >= MAX_DEPTH ? "elements in each other too deep" : "too many elements",
          line,
          "at most " + MAX_DEPTH + " levels and " + ElementBudget.MOST + " elements",
          "export one field only");
    }
    Map<String, String> attributes = new HashMap<>();
    for (int i = 0; i < reader.getAttributeCount(); i++) {
      attributes.put(reader.getAttributeLocalName(i), reader.getAttributeValue(i));
    }
    return new Open(reader.getLocalName(), attributes, line);
  }

  private FormatException fault(String what, int line, String allowed, String next) {
    return new FormatException(new Fault(what, place + " line " + line, allowed, next));
  }

  private static String firstLine(@Nullable String message) {
    String text = message == null ? "" : message;
    int from = text.indexOf("Message: ");
    text = from >= 0 ? text.substring(from + "Message: ".length()) : text;
    return text.lines().findFirst().orElse("");
  }

  /** An element whose end has not come yet. */
  private static final class Open {
    final String name;
    final Map<String, String> attributes;
    final int line;
    final List<XmlElement> children = new ArrayList<>();
    final StringBuilder text = new StringBuilder(0);

    Open(String name, Map<String, String> attributes, int line) {
      this.name = name;
      this.attributes = attributes;
      this.line = line;
    }

    XmlElement close() {
      return new XmlElement(name, attributes, children, text.toString().strip(), line);
    }
  }
}
