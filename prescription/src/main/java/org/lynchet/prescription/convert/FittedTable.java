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
import org.lynchet.formats.PlainDecimal;
import org.lynchet.formats.TableLimits.FixedWidth;
import org.lynchet.prescription.fault.Warning;
import org.lynchet.prescription.plan.HandoffChoices.Format;

/** Fits a table to the room that a format has for names and values. */
final class FittedTable {
  /** The width said of texts where a format has no widths. */
  private static final int ANY_WIDTH = 254;

  private final FeatureTable table;
  private final @Nullable FixedWidth room;
  private final Set<String> taken;
  private final List<String> rounded = new ArrayList<>();

  private FittedTable(FeatureTable table, @Nullable FixedWidth room, Set<String> reserved) {
    this.table = table;
    this.room = room;
    this.taken = new HashSet<>(reserved);
  }

  /** Names that differ in more than case, and at least one column; blanks at ends are gone. */
  static FeatureTable ofAnyWidth(FeatureTable table) {
    return new FittedTable(withColumn(table), null, Set.of("fid", "geom")).fit();
  }

  /**
   * Short names of ASCII characters; texts for numbers and flags where a feature has none, since
   * columns of fixed width have no way to say so.
   *
   * @param format what the warning calls the format
   * @param warnings takes which numbers were rounded
   */
  static FeatureTable ofFixedWidth(
      FeatureTable table, FixedWidth room, Format format, List<Warning> warnings) {
    FittedTable fitted = new FittedTable(withColumn(table), room, Set.of());
    FeatureTable made = fitted.fit();
    if (!fitted.rounded.isEmpty()) {
      warnings.add(
          new Warning(
              Warning.Code.VALUES_ROUNDED,
              "Numbers were rounded to "
                  + room.decimals()
                  + " decimals and "
                  + room.number()
                  + " characters, which a "
                  + format
                  + " keeps: "
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
            List.of(Column.text("name", ANY_WIDTH)),
            table.features().stream()
                .map(f -> new Feature(f.geometry(), List.of(table.name())))
                .toList())
        : table;
  }

  private FeatureTable fit() {
    List<Column> columns = new ArrayList<>();
    for (int c = 0; c < table.columns().size(); c++) {
      Column column = table.columns().get(c);
      columns.add(
          room == null
              ? new Column(unique(column.name(), Integer.MAX_VALUE), column.kind(), ANY_WIDTH, 0)
              : narrow(c, unique(narrowName(column.name(), room), room.name()), room));
    }
    List<Feature> features = new ArrayList<>();
    for (Feature feature : table.features()) {
      List<@Nullable Object> values = new ArrayList<>();
      for (int c = 0; c < columns.size(); c++) {
        values.add(value(columns.get(c), feature.values().get(c)));
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

  private static String narrowName(String name, FixedWidth room) {
    String plain = name.toUpperCase(Locale.ROOT).replaceAll("[^A-Z0-9_]", "_");
    String lettered = plain.matches("[A-Z].*") ? plain : "C" + plain;
    return lettered.substring(0, Math.min(lettered.length(), room.name()));
  }

  /** The name, its end counted up until no other column has it in any case. */
  private String unique(String name, int longest) {
    String candidate = name;
    for (int i = 2; !taken.add(candidate.toLowerCase(Locale.ROOT)); i++) {
      String end = "_" + i;
      candidate = name.substring(0, Math.min(name.length(), longest - end.length())) + end;
    }
    return candidate;
  }

  private Column narrow(int c, String name, FixedWidth width) {
    Column column = table.columns().get(c);
    List<@Nullable Object> values = new ArrayList<>();
    table.features().forEach(f -> values.add(f.values().get(c)));
    boolean whole = values.stream().allMatch(Objects::nonNull);
    if (column.kind() == Column.Kind.FLAG && whole) {
      return Column.flag(name);
    }
    return column.kind() == Column.Kind.NUMBER && whole
        ? number(name, values, width)
        : text(name, values, width);
  }

  private Column number(String name, List<@Nullable Object> values, FixedWidth width) {
    int before = 1;
    int after = 0;
    for (Object value : values) {
      BigDecimal number = BigDecimal.valueOf((Double) value).stripTrailingZeros();
      before = Math.max(before, number.precision() - number.scale());
      after = Math.max(after, number.scale());
    }
    int decimals = Math.min(Math.min(after, width.decimals()), width.number() - before - 2);
    if (decimals >= 0 && decimals < after) {
      rounded.add(name);
    }
    return decimals < 0
        ? text(name, values, width)
        : Column.number(name, before + decimals + 2, decimals);
  }

  private static Column text(String name, List<@Nullable Object> values, FixedWidth room) {
    int width = 1;
    for (Object value : values) {
      width = Math.max(width, text(value).getBytes(StandardCharsets.UTF_8).length);
    }
    return Column.text(name, Math.min(width, room.textBytes()));
  }

  private @Nullable Object value(Column column, @Nullable Object value) {
    if (column.kind() == Column.Kind.TEXT) {
      return value == null && room == null ? null : text(value);
    }
    return value;
  }

  private static String text(@Nullable Object value) {
    return value instanceof Double number
        ? PlainDecimal.of(number)
        : Objects.toString(value, "").strip();
  }
}
