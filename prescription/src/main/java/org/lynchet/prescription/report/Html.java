package org.lynchet.prescription.report;

import java.io.StringWriter;
import java.util.List;
import javax.xml.stream.XMLOutputFactory;
import javax.xml.stream.XMLStreamException;
import javax.xml.stream.XMLStreamWriter;

/** Writes elements and text of a page; every text is escaped. */
final class Html {
  private final StringWriter page = new StringWriter();
  private final XMLStreamWriter xml;

  Html() {
    page.append("<!DOCTYPE html>\n");
    try {
      xml = XMLOutputFactory.newDefaultFactory().createXMLStreamWriter(page);
    } catch (XMLStreamException e) {
      throw new IllegalStateException(e);
    }
  }

  /** One call of the writer beneath. */
  @FunctionalInterface
  private interface Call {
    void run() throws XMLStreamException;
  }

  /** Writing into memory never fails. */
  private static void run(Call call) {
    try {
      call.run();
    } catch (XMLStreamException e) {
      throw new IllegalStateException(e);
    }
  }

  /**
   * Begins an element.
   *
   * @param attributes names and values by turns
   */
  Html open(String name, String... attributes) {
    run(
        () -> {
          xml.writeStartElement(name);
          for (int i = 0; i < attributes.length; i += 2) {
            xml.writeAttribute(attributes[i], attributes[i + 1]);
          }
        });
    return this;
  }

  /** Ends the element that was begun last. */
  Html close() {
    run(
        () -> {
          xml.writeCharacters("");
          xml.writeEndElement();
          xml.writeCharacters("\n");
        });
    return this;
  }

  /** An element that has no content, such as {@code meta}. */
  Html empty(String name, String... attributes) {
    run(
        () -> {
          xml.writeEmptyElement(name);
          for (int i = 0; i < attributes.length; i += 2) {
            xml.writeAttribute(attributes[i], attributes[i + 1]);
          }
          xml.writeCharacters("\n");
        });
    return this;
  }

  /** Text within the element that was begun last. */
  Html text(String text) {
    run(() -> xml.writeCharacters(text));
    return this;
  }

  /** An element with nothing but text in it. */
  Html element(String name, String text, String... attributes) {
    return open(name, attributes).text(text).close();
  }

  /** An element that is written already and well-formed. */
  Html written(String element) {
    run(
        () -> {
          xml.writeCharacters("");
          xml.flush();
        });
    page.append(element);
    return this;
  }

  /**
   * The head of a table; cells of the body take their column's name along, for narrow screens.
   *
   * @param columns names of the columns
   */
  Html head(List<String> columns) {
    open("thead").open("tr");
    columns.forEach(column -> element("th", column, "scope", "col"));
    return close().close();
  }

  /** A row of a table; its first cell names it. */
  Html row(List<String> columns, List<String> cells, String kind) {
    open("tr", "class", kind);
    element("th", cells.get(0), "scope", "row", "data-column", columns.get(0));
    for (int i = 1; i < cells.size(); i++) {
      element("td", cells.get(i), "data-column", columns.get(i));
    }
    return close();
  }

  /** The page. */
  @Override
  public String toString() {
    run(xml::flush);
    return page + "\n";
  }
}
