package org.lynchet.prescription.handoff;

import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import org.lynchet.formats.Fault;
import org.lynchet.formats.FeatureReader;
import org.lynchet.formats.FeatureTable;
import org.lynchet.formats.FeatureWriter;
import org.lynchet.formats.FormatException;
import org.lynchet.formats.geojson.GeoJson;
import org.lynchet.formats.geopackage.GeoPackage;
import org.lynchet.formats.isoxml.TaskData;
import org.lynchet.formats.kml.Kml;
import org.lynchet.formats.shapefile.Shapefile;
import org.lynchet.prescription.plan.HandoffChoices.Format;

/** Knows for each format how the files of one table end, and who reads and writes them. */
public final class TableFormat {
  private TableFormat() {}

  /** The ending of the file's name, with its dot. */
  public static String ending(Format format) {
    return switch (format) {
      case SHAPEFILE -> ".shp";
      case GEOJSON -> ".geojson";
      case GEOPACKAGE -> ".gpkg";
      case KML -> ".kml";
      case ISOXML -> ".zip";
    };
  }

  /** The reader of a file that holds one table. */
  static FeatureReader reader(Format format) {
    return switch (format) {
      case SHAPEFILE -> Shapefile.reader();
      case GEOJSON -> GeoJson.reader();
      case GEOPACKAGE -> GeoPackage.reader("");
      case KML -> Kml.reader("");
      case ISOXML -> TaskData.boundaryReader("");
    };
  }

  /**
   * The writer of one table.
   *
   * @param date what the file says of its date, where its format has one
   * @throws IllegalArgumentException for task data, which holds no table
   */
  public static FeatureWriter writer(Format format, LocalDate date) {
    return switch (format) {
      case SHAPEFILE -> Shapefile.writer(date);
      case GEOJSON -> GeoJson.writer();
      case GEOPACKAGE -> (table, file) -> GeoPackage.write(List.of(table), date, file);
      case KML -> (table, file) -> Kml.write(List.of(table), file);
      case ISOXML -> throw new IllegalArgumentException("task data holds no table");
    };
  }

  /** Reads a file again: the differences from the table that it must say; empty for none. */
  public static List<String> differences(Format format, FeatureTable meant, Path file) {
    try {
      return ReadBack.differences(meant, reader(format).read(file), format != Format.SHAPEFILE);
    } catch (FormatException e) {
      return e.faults().stream().map(Fault::what).toList();
    }
  }
}
