package org.lynchet.formats.geopackage;

import java.nio.file.Path;
import java.sql.SQLException;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import java.util.Set;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.io.ParseException;
import org.lynchet.formats.Column;
import org.lynchet.formats.DeclaredCrs;
import org.lynchet.formats.FaultList;
import org.lynchet.formats.Feature;
import org.lynchet.formats.FeatureTable;
import org.lynchet.formats.FormatException;

/** Reads the features of one layer, in the order of their keys. */
final class LayerReader {
  private static final int MOST_FEATURES = 1_000_000;
  private static final int MOST_COLUMNS = 2_000;

  private static final Set<String> NUMBERS =
      Set.of(
          "TINYINT",
          "SMALLINT",
          "MEDIUMINT",
          "INT",
          "INTEGER",
          "FLOAT",
          "DOUBLE",
          "REAL",
          "NUMERIC");

  private final Database database;
  private final String layer;
  private final String geometryColumn;
  private final String place;
  private final FaultList faults = new FaultList();

  LayerReader(Database database, Path file, String layer, String geometryColumn) {
    this.database = database;
    this.layer = layer;
    this.geometryColumn = geometryColumn;
    this.place = file + " layer " + layer;
  }

  FeatureTable read(DeclaredCrs crs) throws SQLException, FormatException {
    List<Column> columns = columns();
    String wanted =
        columns.stream().map(c -> ", " + Database.quoted(c.name())).collect(Collectors.joining());
    List<Feature> features = new ArrayList<>();
    for (List<@Nullable Object> row :
        database.ask(
            "SELECT "
                + Database.quoted(geometryColumn)
                + wanted
                + " FROM "
                + Database.quoted(layer)
                + " ORDER BY rowid",
            MOST_FEATURES)) {
      features.add(feature(row, columns, features.size() + 1));
    }
    faults.throwIfAny();
    return new FeatureTable(layer, crs, columns, features);
  }

  /** The columns but for the key, the geometry and other binary ones. */
  private List<Column> columns() throws SQLException {
    List<Column> columns = new ArrayList<>();
    for (List<@Nullable Object> info :
        database.ask(
            "SELECT name, upper(type), pk FROM pragma_table_info(?)", MOST_COLUMNS, layer)) {
      String name = Objects.toString(info.get(0), "");
      String type = Objects.toString(info.get(1), "").replaceAll("\\(.*", "");
      boolean key = info.get(2) instanceof Number number && number.intValue() != 0;
      if (!key && !type.equals("BLOB") && !name.equalsIgnoreCase(geometryColumn)) {
        columns.add(
            type.equals("BOOLEAN")
                ? Column.flag(name)
                : NUMBERS.contains(type) ? Column.number(name, 18, 9) : Column.text(name, 254));
      }
    }
    return columns;
  }

  private Feature feature(List<@Nullable Object> row, List<Column> columns, int number) {
    List<@Nullable Object> values = new ArrayList<>();
    for (int i = 0; i < columns.size(); i++) {
      values.add(value(columns.get(i), row.get(i + 1), number));
    }
    return new Feature(geometry(row.get(0), number), values);
  }

  private Geometry geometry(@Nullable Object blob, int number) {
    if (blob instanceof byte[] bytes) {
      try {
        return Blob.read(bytes);
      } catch (ParseException e) {
        fault("its geometry cannot be read: " + e.getMessage(), number, "a geometry blob");
      }
    } else if (blob != null) {
      fault("its geometry is no blob", number, "a geometry blob");
    }
    return new GeometryFactory().createGeometryCollection();
  }

  private @Nullable Object value(Column column, @Nullable Object value, int number) {
    if (value == null) {
      return null;
    }
    if (column.kind() == Column.Kind.TEXT) {
      return value instanceof byte[] ? null : value.toString();
    }
    if (value instanceof Number seen) {
      return column.kind() == Column.Kind.FLAG
          ? (Object) (seen.doubleValue() != 0)
          : (Object) seen.doubleValue();
    }
    fault(
        column.name() + " is " + value.getClass().getSimpleName().toLowerCase(Locale.ROOT),
        number,
        column.kind() == Column.Kind.FLAG ? "0 or 1" : "a number");
    return null;
  }

  private void fault(String what, int number, String allowed) {
    faults.add(what, place + " feature " + number, allowed, "export the layer again");
  }
}
