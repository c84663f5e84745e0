package org.lynchet.formats.shapefile;

import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import org.jspecify.annotations.Nullable;
import org.lynchet.formats.Column;
import org.lynchet.formats.FaultList;
import org.lynchet.formats.PlainDecimal;

/**
 * Decodes the values of one column of a .dbf.
 *
 * @param type dBASE's letter for it
 * @param offset where it begins in a row, in bytes
 */
record DbfField(char type, Column column, int offset, Charset charset, String place) {
  static DbfField of(ByteBuffer descriptor, int offset, Charset charset, String place) {
    byte[] name = new byte[11];
    descriptor.get(0, name);
    int length = 0;
    while (length < name.length && name[length] != 0) {
      length++;
    }
    String label = new String(name, 0, length, charset).strip();
    char type = (char) (descriptor.get(11) & 0xFF);
    int width = descriptor.get(16) & 0xFF;
    int decimals = descriptor.get(17) & 0xFF;
    Column column =
        switch (type) {
          case 'N', 'F' -> Column.number(label, width, decimals);
          case 'L' -> new Column(label, Column.Kind.FLAG, width, 0);
          default -> Column.text(label, width);
        };
    return new DbfField(type, column, offset, charset, place);
  }

  void check(FaultList faults) {
    if ("CNFLD".indexOf(type) < 0) {
      faults.add(
          "its type is " + (type > ' ' && type < 127 ? type : "byte " + (int) type),
          place,
          "text (C), number (N, F), yes or no (L), date (D)",
          "leave this column out");
    }
    if (column.width() == 0 || column.name().isEmpty()) {
      faults.add("no name or no width", place, "a name and a width", "leave this column out");
    }
  }

  /** The value in a row; null if it is blank or dBASE's sign for "none", except for text. */
  @Nullable Object value(ByteBuffer row, String where, FaultList faults) {
    byte[] bytes = new byte[column.width()];
    row.get(offset, bytes);
    return switch (column.kind()) {
      case TEXT -> text(bytes, where, faults);
      case NUMBER -> number(ascii(bytes), where, faults);
      case FLAG -> flag(ascii(bytes), where, faults);
    };
  }

  private @Nullable String text(byte[] bytes, String where, FaultList faults) {
    int end = bytes.length;
    while (end > 0 && (bytes[end - 1] == ' ' || bytes[end - 1] == 0)) {
      end--;
    }
    try {
      return charset.newDecoder().decode(ByteBuffer.wrap(bytes, 0, end)).toString();
    } catch (CharacterCodingException e) {
      fault("not " + charset + ": " + ascii(bytes), where, faults, "text in " + charset);
      return null;
    }
  }

  private @Nullable Double number(String text, String where, FaultList faults) {
    if (text.isEmpty() || text.chars().allMatch(c -> c == '*')) {
      return null;
    }
    double value = PlainDecimal.parse(text);
    if (Double.isNaN(value)) {
      fault("not a number: " + text, where, faults, "a number such as -12.5");
      return null;
    }
    return value;
  }

  private @Nullable Boolean flag(String text, String where, FaultList faults) {
    return switch (text) {
      case "T", "t", "Y", "y" -> Boolean.TRUE;
      case "F", "f", "N", "n" -> Boolean.FALSE;
      case "", "?" -> null;
      default -> {
        fault("neither yes nor no: " + text, where, faults, "T, F, Y, N or ?");
        yield null;
      }
    };
  }

  private void fault(String what, String where, FaultList faults, String allowed) {
    faults.add(what, where + ", column " + column.name(), allowed, "mend the value");
  }

  /** The bytes as letters, without the blanks and zero bytes around them. */
  private static String ascii(byte[] bytes) {
    return new String(bytes, StandardCharsets.ISO_8859_1).trim();
  }
}
