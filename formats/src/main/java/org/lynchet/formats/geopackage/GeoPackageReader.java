package org.lynchet.formats.geopackage;

import java.nio.file.Path;
import java.sql.SQLException;
import java.util.List;
import java.util.Objects;
import org.jspecify.annotations.Nullable;
import org.lynchet.formats.DeclaredCrs;
import org.lynchet.formats.Fault;
import org.lynchet.formats.FeatureReader;
import org.lynchet.formats.FeatureTable;
import org.lynchet.formats.FormatException;
import org.lynchet.formats.InputFile;
import org.lynchet.formats.NamedChoice;

/** Chooses the layer of a file and reads it. */
final class GeoPackageReader implements FeatureReader {
  private static final int MOST_LAYERS = 10_000;

  private static final String LAYERS =
      "SELECT g.table_name, g.column_name, g.srs_id FROM gpkg_geometry_columns g"
          + " JOIN sqlite_master m ON lower(m.name) = lower(g.table_name)"
          + " WHERE m.type = 'table' AND m.sql NOT LIKE 'CREATE VIRTUAL%' ORDER BY 1";

  private static final NamedChoice<List<@Nullable Object>> CHOICE =
      new NamedChoice<>(
          "layer",
          GeoPackageReader::name,
          GeoPackageReader::name,
          "a layer of features",
          "name one behind the file, as in field.gpkg#boundary");

  private final String layer;

  GeoPackageReader(String layer) {
    this.layer = layer;
  }

  @Override
  public FeatureTable read(Path file) throws FormatException {
    checkFile(file);
    try (Database database = Database.openForReading(file)) {
      return read(database, file);
    } catch (SQLException e) {
      throw fault(
          "it cannot be read as a GeoPackage: " + e.getMessage(),
          file,
          "a whole file of SQLite with the tables of GeoPackage",
          "export it again");
    }
  }

  /** SQLite would make a file that is not there, and takes any file that is empty. */
  private static void checkFile(Path file) throws FormatException {
    if (InputFile.size(file) == 0) {
      throw fault("the file is empty", file, "a GeoPackage", "export it again");
    }
  }

  private FeatureTable read(Database database, Path file) throws SQLException, FormatException {
    List<List<@Nullable Object>> layers = database.ask(LAYERS, MOST_LAYERS);
    List<@Nullable Object> meant = CHOICE.choose(layers, layer, file.toString());
    String name = name(meant);
    DeclaredCrs crs = crs(database, meant.get(2));
    return new LayerReader(database, file, name, text(meant.get(1))).read(crs);
  }

  private static String name(List<@Nullable Object> layer) {
    return text(layer.get(0));
  }

  private static DeclaredCrs crs(Database database, @Nullable Object srsId) throws SQLException {
    List<List<@Nullable Object>> rows =
        database.ask(
            "SELECT upper(organization), organization_coordsys_id, definition"
                + " FROM gpkg_spatial_ref_sys WHERE srs_id = ?",
            1,
            srsId);
    if (rows.isEmpty()) {
      return DeclaredCrs.NONE;
    }
    String code = text(rows.get(0).get(0)) + ":" + text(rows.get(0).get(1));
    if (code.startsWith("EPSG:")) {
      return code.equals("EPSG:4326") ? DeclaredCrs.LON_LAT : DeclaredCrs.code(code);
    }
    String definition = text(rows.get(0).get(2));
    return definition.contains("[") ? DeclaredCrs.wkt(definition) : DeclaredCrs.NONE;
  }

  private static String text(@Nullable Object value) {
    return Objects.toString(value, "");
  }

  private static FormatException fault(String what, Path file, String allowed, String next) {
    return new FormatException(new Fault(what, file.toString(), allowed, next));
  }
}
