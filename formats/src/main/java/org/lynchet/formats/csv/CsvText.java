package org.lynchet.formats.csv;

import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;

/** Decodes the bytes of a file and finds what stands between its values. */
final class CsvText {
  private static final String MARK = "\uFEFF";

  private CsvText() {}

  /** The text without its byte order mark; bytes that are no UTF-8 become a question mark. */
  static String decode(byte[] bytes) {
    String text = new String(bytes, charset(bytes));
    return text.startsWith(MARK) ? text.substring(1) : text;
  }

  /** The comma, semicolon or tab that occurs most in the first line that isn't blank. */
  static char separator(String text) {
    String header = text.lines().filter(line -> !line.isBlank()).findFirst().orElse("");
    char separator = ',';
    for (char candidate : new char[] {';', '\t'}) {
      if (count(header, candidate) > count(header, separator)) {
        separator = candidate;
      }
    }
    return separator;
  }

  private static Charset charset(byte[] bytes) {
    if (bytes.length >= 2 && bytes[0] == (byte) 0xFF && bytes[1] == (byte) 0xFE) {
      return StandardCharsets.UTF_16LE;
    }
    if (bytes.length >= 2 && bytes[0] == (byte) 0xFE && bytes[1] == (byte) 0xFF) {
      return StandardCharsets.UTF_16BE;
    }
    return StandardCharsets.UTF_8;
  }

  private static long count(String text, char wanted) {
    return text.chars().filter(c -> c == wanted).count();
  }
}
