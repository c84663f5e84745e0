package org.lynchet.formats.csv;

import java.nio.ByteBuffer;
import java.nio.CharBuffer;
import java.nio.charset.Charset;
import java.nio.charset.CharsetDecoder;
import java.nio.charset.CoderResult;
import java.nio.charset.CodingErrorAction;
import java.nio.charset.StandardCharsets;
import org.lynchet.formats.Fault;
import org.lynchet.formats.FormatException;

/** Decodes the bytes of a file and finds what stands between its values. */
final class CsvText {
  private static final String MARK = "\uFEFF";
  private static final String ZIPPED = "PK\u0003\u0004";
  private static final String ALLOWED = "text in UTF-8, or in UTF-16 with its byte order mark";

  private CsvText() {}

  /**
   * The text without its byte order mark.
   *
   * @param file where it is from
   * @throws FormatException if the bytes are no text, with the first line that is none
   */
  static String decode(byte[] bytes, String file) throws FormatException {
    Charset charset = charset(bytes);
    CharsetDecoder decoder =
        charset
            .newDecoder()
            .onMalformedInput(CodingErrorAction.REPORT)
            .onUnmappableCharacter(CodingErrorAction.REPORT);
    ByteBuffer in = ByteBuffer.wrap(bytes);
    CharBuffer out = CharBuffer.allocate(bytes.length + 1);
    CoderResult end = decoder.decode(in, out, true);
    String text = out.flip().toString();
    if (new String(bytes, 0, Math.min(4, bytes.length), StandardCharsets.ISO_8859_1)
        .equals(ZIPPED)) {
      throw noText("it is packed, as the files of spreadsheets are", "", file);
    }
    int zero = text.indexOf('\0');
    if (zero >= 0) {
      throw noText(
          "it has zeros between its characters: it is no text, or UTF-16 without a mark",
          text.substring(0, zero),
          file);
    }
    if (end.isError()) {
      throw noText(
          charset.equals(StandardCharsets.UTF_8)
              ? "not UTF-8: byte "
                  + String.format("%02X", bytes[in.position()])
                  + ", the "
                  + (in.position() + 1)
                  + ". of the file; it is text in another encoding, or no text"
              : "not " + charset + ", although it has its mark",
          text,
          file);
    }
    return text.startsWith(MARK) ? text.substring(1) : text;
  }

  private static FormatException noText(String what, String before, String file) {
    long line = 1 + before.chars().filter(c -> c == '\n').count();
    return new FormatException(
        new Fault(
            what,
            file + ", line " + line,
            ALLOWED,
            "export the vertices as CSV, and choose UTF-8 as its encoding"));
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
