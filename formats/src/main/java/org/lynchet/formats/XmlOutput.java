package org.lynchet.formats;

import java.io.ByteArrayOutputStream;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;

/** Writes an XML text in UTF-8, one element in a line, the same bytes for the same calls. */
public final class XmlOutput {
  private final ByteArrayOutputStream bytes = new ByteArrayOutputStream(1 << 14);
  private final StringBuilder line = new StringBuilder();
  private final List<String> path = new ArrayList<>();
  private boolean startIsOpen;

  /** Begins with the declaration. */
  public XmlOutput() {
    line.append("<?xml version=\"1.0\" encoding=\"UTF-8\"?>");
  }

  /** Begins an element in the one that is open. */
  public XmlOutput start(String name) {
    endLine();
    line.append(" ".repeat(path.size())).append('<').append(name);
    path.add(name);
    startIsOpen = true;
    return this;
  }

  /** Gives the element that was just begun an attribute; nothing if the value is empty. */
  public XmlOutput attribute(String name, Object value) {
    String text = value.toString();
    if (!text.isEmpty()) {
      line.append(' ').append(name).append("=\"").append(escaped(text)).append('"');
    }
    return this;
  }

  /** Ends the element that is open. */
  public XmlOutput end() {
    String name = path.remove(path.size() - 1);
    if (startIsOpen) {
      line.append("/>");
      startIsOpen = false;
    } else {
      endLine();
      line.append(" ".repeat(path.size())).append("</").append(name).append('>');
    }
    return this;
  }

  /** Writes an element with nothing but text in it. */
  public XmlOutput element(String name, String text) {
    endLine();
    line.append(" ".repeat(path.size())).append('<').append(name).append('>');
    line.append(escaped(text)).append("</").append(name).append('>');
    return this;
  }

  /** Writes an element with one attribute and text in it. */
  public XmlOutput element(String name, String attribute, String value, String text) {
    start(name).attribute(attribute, value);
    startIsOpen = false;
    path.remove(path.size() - 1);
    line.append('>').append(escaped(text)).append("</").append(name).append('>');
    return this;
  }

  /** Everything written; all elements must have been ended. */
  public byte[] toBytes() {
    if (!path.isEmpty()) {
      throw new IllegalStateException("not ended: " + path);
    }
    endLine();
    return bytes.toByteArray();
  }

  private void endLine() {
    if (startIsOpen) {
      line.append('>');
      startIsOpen = false;
    }
    line.append('\n');
    bytes.writeBytes(line.toString().getBytes(StandardCharsets.UTF_8));
    line.setLength(0);
  }

  /**
   * The text as it stands in XML.
   *
   * @throws IllegalArgumentException if it has a character that XML 1.0 (section 2.2) can't hold
   */
  private static String escaped(String text) {
    StringBuilder out = new StringBuilder(text.length());
    text.codePoints()
        .forEach(
            c -> {
              boolean held =
                  c == '\t' || c == '\n' || c == '\r' || (c >= 0x20 && c < 0xD800) || c >= 0xE000;
              if (!held || c == 0xFFFE || c == 0xFFFF) {
                throw new IllegalArgumentException("XML has no character " + c);
              }
              switch (c) {
                case '&' -> out.append("&amp;");
                case '<' -> out.append("&lt;");
                case '>' -> out.append("&gt;");
                case '"' -> out.append("&quot;");
                case '\t', '\n', '\r' -> out.append("&#").append(c).append(';');
                default -> out.appendCodePoint(c);
              }
            });
    return out.toString();
  }
}
