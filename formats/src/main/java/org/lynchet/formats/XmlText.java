package org.lynchet.formats;

import java.io.ByteArrayInputStream;
import java.io.InputStreamReader;
import java.io.Reader;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Decodes the bytes of an XML text strictly, by its byte order mark or by what it declares (XML
 * 1.0, appendix F); else as UTF-8. The JDK's own decoding tells of bad bytes on standard error.
 */
final class XmlText {
  private static final int LONGEST_DECLARATION = 200;
  private static final Pattern ENCODING =
      Pattern.compile("^<\\?xml[^>]*\\sencoding\\s*=\\s*[\"']([^\"']*)");

  private XmlText() {}

  /** A reader that fails at the first bytes that are no text; none for an encoding not known. */
  static Optional<Reader> decoded(byte[] bytes) {
    String start =
        new String(
            bytes, 0, Math.min(bytes.length, LONGEST_DECLARATION), StandardCharsets.ISO_8859_1);
    if (start.startsWith("\u00EF\u00BB\u00BF")) {
      return Optional.of(reader(bytes, 3, StandardCharsets.UTF_8));
    }
    if (start.startsWith("\u00FE\u00FF") || start.startsWith("\u00FF\u00FE")) {
      return Optional.of(reader(bytes, 0, StandardCharsets.UTF_16));
    }
    Matcher declared = ENCODING.matcher(start);
    if (!declared.find()) {
      return Optional.of(reader(bytes, 0, StandardCharsets.UTF_8));
    }
    return charset(declared.group(1)).map(charset -> reader(bytes, 0, charset));
  }

  private static Reader reader(byte[] bytes, int from, Charset charset) {
    return new InputStreamReader(
        new ByteArrayInputStream(bytes, from, bytes.length - from), charset.newDecoder());
  }

  private static Optional<Charset> charset(String name) {
    try {
      return Optional.of(Charset.forName(name));
    } catch (IllegalArgumentException unknown) {
      return Optional.empty();
    }
  }
}
