package org.lynchet.formats.shapefile;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.CharBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.util.Arrays;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;
import org.lynchet.formats.Column;
import org.lynchet.formats.Feature;

/**
 * Encodes values as the bytes of a dBASE III table in UTF-8.
 *
 * <p>Numbers stand right, text left, both padded with blanks. A value that doesn't fit its column
 * is refused: dBASE's own sign for that, a row of asterisks, is read as 0 by some displays.
 */
final class DbfEncoder {
  private static final Pattern NAME = Pattern.compile("[A-Z][A-Z0-9_]{0,9}");
  private static final int MAX_COLUMNS = 128;
  private static final int MAX_TEXT_BYTES = 254;
  private static final int MAX_NUMBER_WIDTH = 20;
  private static final int MAX_DECIMALS = 15;

  private final List<Column> columns;
  private final LocalDate date;
  private final int rowBytes;

  /**
   * Checks the columns.
   *
   * @throws IllegalArgumentException if there are none or more than 128, or a name or a width is
   *     not one that dBASE III has
   */
  DbfEncoder(List<Column> columns, LocalDate date) {
    require(!columns.isEmpty() && columns.size() <= MAX_COLUMNS, "1 to 128 columns", columns);
    Set<String> names = new HashSet<>();
    for (Column column : columns) {
      require(NAME.matcher(column.name()).matches(), "a name of A-Z, 0-9, _, 1 to 10", column);
      require(names.add(column.name()), "different names", column);
      require(fits(column), "a width that dBASE III has", column);
    }
    this.columns = columns;
    this.date = date;
    this.rowBytes = 1 + columns.stream().mapToInt(Column::width).sum();
  }

  byte[] encode(List<Feature> features) {
    int headerBytes = 33 + 32 * columns.size();
    long size = headerBytes + (long) rowBytes * features.size() + 1;
    require(size <= Integer.MAX_VALUE, "at most 2 GB", size);
    ByteBuffer out = ByteBuffer.allocate((int) size).order(ByteOrder.LITTLE_ENDIAN);
    out.put((byte) 3);
    out.put((byte) (date.getYear() - 1900));
    out.put((byte) date.getMonthValue()).put((byte) date.getDayOfMonth());
    out.putInt(features.size()).putShort((short) headerBytes).putShort((short) rowBytes);
    out.position(32);
    columns.forEach(c -> putDescriptor(out, c));
    out.put((byte) 0x0D);
    features.forEach(f -> putRow(out, f.values()));
    return out.put((byte) 0x1A).array();
  }

  private static boolean fits(Column column) {
    int width = column.width();
    int decimals = column.decimals();
    return switch (column.kind()) {
      case TEXT -> width >= 1 && width <= MAX_TEXT_BYTES && decimals == 0;
      case FLAG -> width == 1 && decimals == 0;
      case NUMBER ->
          width >= 1
              && width <= MAX_NUMBER_WIDTH
              && decimals >= 0
              && decimals <= MAX_DECIMALS
              && (decimals == 0 || width >= decimals + 2);
    };
  }

  private static void putDescriptor(ByteBuffer out, Column column) {
    int start = out.position();
    out.put(column.name().getBytes(StandardCharsets.US_ASCII)).position(start + 11);
    out.put(
        (byte)
            switch (column.kind()) {
              case TEXT -> 'C';
              case NUMBER -> 'N';
              case FLAG -> 'L';
            });
    out.position(start + 16);
    out.put((byte) column.width()).put((byte) column.decimals()).position(start + 32);
  }

  private void putRow(ByteBuffer out, List<@Nullable Object> values) {
    out.put((byte) ' ');
    for (int i = 0; i < columns.size(); i++) {
      Column column = columns.get(i);
      byte[] text = encoded(column, values.get(i));
      if (text.length > column.width()) {
        throw refused("a value that fits " + column, values.get(i));
      }
      byte[] padding = new byte[column.width() - text.length];
      Arrays.fill(padding, (byte) ' ');
      if (column.kind() == Column.Kind.NUMBER) {
        out.put(padding).put(text);
      } else {
        out.put(text).put(padding);
      }
    }
  }

  private static byte[] encoded(Column column, @Nullable Object value) {
    if (column.kind() == Column.Kind.NUMBER && value instanceof Number number) {
      return ascii(rounded(number.doubleValue(), column));
    }
    if (column.kind() == Column.Kind.FLAG && value instanceof Boolean flag) {
      return ascii(flag ? "T" : "F");
    }
    if (column.kind() == Column.Kind.TEXT && value instanceof String text) {
      return utf8(text, column);
    }
    throw refused("a value for " + column, value);
  }

  /** Rounds the number as it is printed, half away from zero: 2.675 gives 2.68. */
  private static String rounded(double value, Column column) {
    if (!Double.isFinite(value)) {
      throw refused("a finite number for " + column, value);
    }
    return BigDecimal.valueOf(value)
        .setScale(column.decimals(), RoundingMode.HALF_UP)
        .toPlainString();
  }

  private static byte[] utf8(String text, Column column) {
    if (text.chars().anyMatch(Character::isISOControl)) {
      throw refused("no control characters in " + column, text);
    }
    try {
      ByteBuffer bytes = StandardCharsets.UTF_8.newEncoder().encode(CharBuffer.wrap(text));
      byte[] copy = new byte[bytes.remaining()];
      bytes.get(copy);
      return copy;
    } catch (CharacterCodingException e) {
      throw new IllegalArgumentException("no text for " + column + ": half a character", e);
    }
  }

  private static byte[] ascii(String text) {
    return text.getBytes(StandardCharsets.US_ASCII);
  }

  private static void require(boolean condition, String wanted, @Nullable Object seen) {
    if (!condition) {
      throw refused(wanted, seen);
    }
  }

  private static IllegalArgumentException refused(String wanted, @Nullable Object seen) {
    return new IllegalArgumentException("wanted: " + wanted + "; seen: " + seen);
  }
}
