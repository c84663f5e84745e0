package org.lynchet.integration.witness.shapefile;

import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;
import java.util.regex.Pattern;
import org.lynchet.integration.witness.Findings;

/** Checks one value of the table: how it stands in its column, and what it is made of. */
final class DbfValue {
  private static final Pattern DATE =
      Pattern.compile("\\d{4}(0[1-9]|1[0-2])(0[1-9]|[12]\\d|3[01])");
  private static final Pattern CONTROL = Pattern.compile("\\p{Cntrl}");

  private DbfValue() {}

  static void check(byte[] bytes, DbfColumn column, String where, Findings findings) {
    String place = where + " " + column.name();
    switch (column.type()) {
      case 'C' -> checkText(bytes, place, findings);
      case 'N', 'F' -> checkNumber(ascii(bytes), column.decimals(), place, findings);
      case 'L' -> checkMatch(ascii(bytes), Pattern.compile("[TF]"), place, findings);
      case 'D' -> checkMatch(ascii(bytes), DATE, place, findings);
      default -> findings.add(ShapefileRule.COLUMN_TYPE, place, "type " + column.type());
    }
  }

  private static void checkText(byte[] bytes, String place, Findings findings) {
    try {
      String text = StandardCharsets.UTF_8.newDecoder().decode(ByteBuffer.wrap(bytes)).toString();
      boolean blank = text.isBlank();
      if ((!blank && text.startsWith(" ")) || CONTROL.matcher(text).find()) {
        findings.add(ShapefileRule.TEXT, place, "'" + text + "'");
      }
    } catch (CharacterCodingException e) {
      findings.add(ShapefileRule.TEXT, place, "not UTF-8: '" + ascii(bytes) + "'");
    }
  }

  private static void checkNumber(String text, int decimals, String place, Findings findings) {
    String fraction = decimals == 0 ? "" : "\\.\\d{" + decimals + "}";
    if (!text.matches(" *-?\\d+" + fraction)) {
      findings.add(ShapefileRule.NUMBER, place, "'" + text + "' with " + decimals + " decimals");
    }
  }

  private static void checkMatch(String text, Pattern form, String place, Findings findings) {
    if (!form.matcher(text).matches()) {
      findings.add(ShapefileRule.VALUE, place, "'" + text + "'");
    }
  }

  private static String ascii(byte[] bytes) {
    return new String(bytes, StandardCharsets.ISO_8859_1);
  }
}
