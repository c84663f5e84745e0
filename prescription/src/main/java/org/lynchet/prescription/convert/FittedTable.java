package org.lynchet.prescription.convert;

import java.math.BigDecimal;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.LinearRing;
import org.lynchet.formats.Column;
import org.lynchet.formats.Feature;
import org.lynchet.formats.FeatureTable;
import org.lynchet.prescription.fault.Warning;

/** Fits a table to what the narrowest of the formats hold. */
final class FittedTable {
  private static final int LONGEST_NAME = 10;
  private static final int WIDEST_TEXT = 254;
  private static final int WIDEST_NUMBER = 18;
  private static final int MOST_DECIMALS = 9;

  private final FeatureTable table;
  private final Set<String> taken;
  private final List<String> rounded = new ArrayList<>();

  private FittedTable(FeatureTable table, Set<String> reserved) {
    this.table = table;
    this.taken = new HashSet<>(reserved);
  }

  /** Names that differ in more than case, and at least one column; blanks at ends are gone. */
  static FeatureTable ofAnyWidth(FeatureTable table) {
    return new FittedTable(withColumn(table), Set.of("fid", "geom")).fit(false);
  }

  /**
   * Names of at most ten ASCII characters; texts for numbers and flags where a feature has none,
   * since a .dbf has no way to say so.
   *
   * @param warnings takes which numbers were rounded
   */
  static FeatureTable ofShapefile(FeatureTable table, List<Warning> warnings) {
    FittedTable fitted = new FittedTable(withColumn(table), Set.of());
    FeatureTable made = fitted.fit(true);
    if (!fitted.rounded.isEmpty()) {
      warnings.add(
          new Warning(
              Warning.Code.VALUES_ROUNDED,
              "Numbers were rounded to "
                  + MOST_DECIMALS
                  + " decimals and "
                  + WIDEST_NUMBER
                  + " characters, which a shapefile keeps: "
                  + String.join(", ", fitted.rounded)
                  + "."));
    }
    return made;
  }

  private static FeatureTable withColumn(FeatureTable table) {
    return table.columns().isEmpty()
        ? new FeatureTable(
            table.name(),
            table.crs(),
            List.of(Column.text("name", WIDEST_TEXT)),
            table.features().stream()
                .map(f -> new Feature(f.geometry(), List.of(table.name())))
                .toList())
        : table;
  }

  private FeatureTable fit(boolean narrow) {
    List<Column> columns = new ArrayList<>();
    for (int c = 0; c < table.columns().size(); c++) {
      Column column = table.columns().get(c);
      String name = unique(narrow ? narrowName(column.name()) : column.name(), narrow);
      columns.add(narrow ? narrow(c, name) : new Column(name, column.kind(), WIDEST_TEXT, 0));
    }
    List<Feature> features = new ArrayList<>();
    for (Feature feature : table.features()) {
      List<@Nullable Object> values = new ArrayList<>();
      for (int c = 0; c < columns.size(); c++) {
        values.add(value(columns.get(c), feature.values().get(c), narrow));
      }
      features.add(new Feature(single(feature.geometry()), values));
    }
    return new FeatureTable(table.name(), table.crs(), columns, features);
  }

  /** A collection of one part is that part, and a ring a line: not all formats tell them apart. */
  private static Geometry single(Geometry geometry) {
    Geometry one = geometry.getNumGeometries() == 1 ? geometry.getGeometryN(0) : geometry;
    return one instanceof LinearRing ring
        ? ring.getFactory().createLineString(ring.getCoordinateSequence())
        : one;
  }

  private static String narrowName(String name) {
    String plain = name.toUpperCase(Locale.ROOT).replaceAll("[^A-Z0-9_]", "_");
    String lettered = plain.matches("[A-Z].*") ? plain : "C" + plain;
    return lettered.substring(0, Math.min(lettered.length(), LONGEST_NAME));
  }

  /** The name, its end counted up until no other column has it in any case. */
  private String unique(String name, boolean narrow) {
    String candidate = name;
    for (int i = 2; !taken.add(candidate.toLowerCase(Locale.ROOT)); i++) {
      String end = "_" + i;
      int room = narrow ? Math.min(name.length(), LONGEST_NAME - end.length()) : name.length();
      candidate = name.substring(0, room) + end;
    }
    return candidate;
  }

  private Column narrow(int c, String name) {
    Column column = table.columns().get(c);
    List<@Nullable Object> values = new ArrayList<>();
    table.features().forEach(f -> values.add(f.values().get(c)));
    boolean whole = values.stream().allMatch(Objects::nonNull);
    if (column.kind() == Column.Kind.FLAG && whole) {
      return Column.flag(name);
    }
    return column.kind() == Column.Kind.NUMBER && whole ? number(name, values) : text(name, values);
  }

  private Column number(String name, List<@Nullable Object> values) {
    int before = 1;
    int after = 0;
    for (Object value : values) {
      BigDecimal number = BigDecimal.valueOf((Double) value).stripTrailingZeros();
      before = Math.max(before, number.precision() - number.scale());
      after = Math.max(after, number.scale());
    }
    int decimals = Math.min(Math.min(after, MOST_DECIMALS), WIDEST_NUMBER - before - 2);
    if (decimals >= 0 && decimals < after) {
      rounded.add(name);
    }
    return decimals < 0 ? text(name, values) : Column.number(name, before + decimals + 2, decimals);
  }

  private static Column text(String name, List<@Nullable Object> values) {
    int width = 1;
    for (Object value : values) {
      width = Math.max(width, text(value).getBytes(StandardCharsets.UTF_8).length);
    }
    return Column.text(name, Math.min(width, WIDEST_TEXT));
  }

  private static @Nullable Object value(Column column, @Nullable Object value, boolean narrow) {
    if (column.kind() == Column.Kind.TEXT) {
      return value == null && !narrow ? null : text(value);
    }
    return value;
  }

  private static String text(@Nullable Object value) {
    return value instanceof Double number
        ? BigDecimal.valueOf(number).stripTrailingZeros().toPlainString()
        : Objects.toString(value, "").strip();
  }
}
