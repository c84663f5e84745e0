package org.lynchet.formats.geopackage;

import java.io.IOException;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import org.lynchet.formats.Characters;
import org.lynchet.formats.FeatureReader;
import org.lynchet.formats.FeatureTable;
import org.lynchet.formats.LayeredFormat;
import org.lynchet.formats.TableLimits;
import org.lynchet.formats.TableLimits.Kinds;

/** What there is to know of GeoPackage. */
final class GeoPackageFormat implements LayeredFormat {
  /** SQLITE_MAX_COLUMN is 2000; key and geometry take two. */
  private static final int MOST_COLUMNS = 1998;

  /** Names that SQLite, GeoPackage and its R-trees keep for their own tables. */
  private static final List<String> KEPT = List.of("sqlite_", "gpkg_", "rtree_");

  @Override
  public List<String> endings() {
    return List.of(".gpkg");
  }

  @Override
  public List<String> readEndings() {
    return List.of(".gpkg");
  }

  @Override
  public FeatureReader reader(String part) {
    return GeoPackage.reader(part);
  }

  @Override
  public void write(List<FeatureTable> tables, LocalDate date, Path file) throws IOException {
    GeoPackage.write(tables, date, file);
  }

  @Override
  public String use() {
    return "for a GIS (GeoPackage)";
  }

  /** SQLite ends a text at a zero. */
  @Override
  public TableLimits limits() {
    return new TableLimits(MOST_COLUMNS, Characters.NO_ZERO, KEPT, Kinds.ANY, null);
  }
}
