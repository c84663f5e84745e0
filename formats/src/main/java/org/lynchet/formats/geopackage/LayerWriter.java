package org.lynchet.formats.geopackage;

import java.sql.SQLException;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Geometry;
import org.lynchet.formats.Column;
import org.lynchet.formats.DeclaredCrs;
import org.lynchet.formats.Feature;
import org.lynchet.formats.FeatureTable;

/** Writes tables as layers. */
final class LayerWriter {
  static final String KEY = "fid";
  static final String GEOMETRY = "geom";
  private static final int WGS_84 = 4326;

  private final Database database;
  private final String lastChange;

  LayerWriter(Database database, LocalDate date) {
    this.database = database;
    this.lastChange = date + "T00:00:00.000Z";
  }

  void write(List<FeatureTable> tables) throws SQLException {
    for (String sql : GeoPackageSchema.statements()) {
      database.run(sql);
    }
    for (FeatureTable table : tables) {
      check(table);
      write(table);
    }
    database.commit();
  }

  private static void check(FeatureTable table) {
    if (!table.crs().equals(DeclaredCrs.LON_LAT)) {
      throw new IllegalArgumentException("not in longitude and latitude: " + table.crs().kind());
    }
    Set<String> names = new HashSet<>(Set.of(KEY, GEOMETRY));
    for (Column column : table.columns()) {
      if (!names.add(column.name().toLowerCase(Locale.ROOT))) {
        throw new IllegalArgumentException("a column name twice: " + column.name());
      }
    }
  }

  private void write(FeatureTable table) throws SQLException {
    String name = table.name();
    String type = type(table.features());
    database.run(
        "CREATE TABLE "
            + Database.quoted(name)
            + " (fid INTEGER PRIMARY KEY AUTOINCREMENT NOT NULL, geom "
            + type
            + table.columns().stream().map(LayerWriter::column).collect(Collectors.joining())
            + ")");
    Envelope box = new Envelope();
    table.features().forEach(f -> box.expandToInclude(f.geometry().getEnvelopeInternal()));
    boolean empty = box.isNull();
    database.run(
        "INSERT INTO gpkg_contents VALUES (?, 'features', ?, '', ?, ?, ?, ?, ?, ?)",
        name,
        name,
        lastChange,
        empty ? null : box.getMinX(),
        empty ? null : box.getMinY(),
        empty ? null : box.getMaxX(),
        empty ? null : box.getMaxY(),
        WGS_84);
    database.run(
        "INSERT INTO gpkg_geometry_columns VALUES (?, 'geom', ?, ?, 0, 0)", name, type, WGS_84);
    insert(table);
    new RTree(database, name).write(table.features());
  }

  private void insert(FeatureTable table) throws SQLException {
    List<@Nullable Object[]> rows = new ArrayList<>();
    for (Feature feature : table.features()) {
      List<@Nullable Object> row = new ArrayList<>();
      row.add(rows.size() + 1);
      row.add(Blob.of(feature.geometry(), WGS_84));
      row.addAll(feature.values());
      rows.add(row.toArray());
    }
    String values = ", ?".repeat(1 + table.columns().size());
    database.runForEach(
        "INSERT INTO " + Database.quoted(table.name()) + " VALUES (?" + values + ")", rows);
  }

  private static String column(Column column) {
    String type =
        switch (column.kind()) {
          case TEXT -> " TEXT";
          case NUMBER -> " DOUBLE";
          case FLAG -> " BOOLEAN";
        };
    return ", " + Database.quoted(column.name()) + type;
  }

  /** The one type that all geometries have; else the type of all. */
  private static String type(List<Feature> features) {
    Set<String> types =
        features.stream()
            .map(Feature::geometry)
            .map(Geometry::getGeometryType)
            .collect(Collectors.toSet());
    return types.size() == 1 ? types.iterator().next().toUpperCase(Locale.ROOT) : "GEOMETRY";
  }
}
