package org.lynchet.integration.witness.shapefile;

import java.nio.charset.StandardCharsets;
import java.util.regex.Pattern;
import org.lynchet.integration.witness.Findings;

/**
 * One column of the table, as its 32 bytes describe it.
 *
 * @param name up to the first zero byte
 * @param type C, N, F, L or D
 * @param width in bytes
 * @param decimals digits after the point
 */
record DbfColumn(String name, char type, int width, int decimals) {
  static final int DESCRIPTOR = 32;
  private static final int NAME_BYTES = 11;
  private static final Pattern NAME = Pattern.compile("[A-Z][A-Z0-9_]{0,9}");

  /** Reads and checks the descriptor at an offset. */
  static DbfColumn check(FileBytes table, int at, Findings findings) {
    String padded = new String(table.slice(at, NAME_BYTES), StandardCharsets.ISO_8859_1);
    int end = padded.indexOf('\0');
    String name = end < 0 ? padded : padded.substring(0, end);
    if (end < 0 || !NAME.matcher(name).matches() || !padded.substring(end).matches("\0+")) {
      findings.add(ShapefileRule.COLUMN_NAME, table.place(at), "'" + padded + "'");
    }
    DbfColumn column =
        new DbfColumn(
            name, (char) table.unsigned(at + 11), table.unsigned(at + 16), table.unsigned(at + 17));
    if (!column.isTypePossible()) {
      findings.add(ShapefileRule.COLUMN_TYPE, table.place(at + 11), column.toString());
    }
    return column;
  }

  private boolean isTypePossible() {
    return switch (type) {
      case 'C' -> width >= 1 && width <= 254 && decimals == 0;
      case 'N', 'F' -> width >= 1 && width <= 20 && (decimals == 0 || decimals <= width - 2);
      case 'L' -> width == 1 && decimals == 0;
      case 'D' -> width == 8 && decimals == 0;
      default -> false;
    };
  }
}
