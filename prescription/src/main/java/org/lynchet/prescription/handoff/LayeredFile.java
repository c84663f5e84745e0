package org.lynchet.prescription.handoff;

import java.io.IOException;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.function.Function;
import org.lynchet.formats.Column;
import org.lynchet.formats.DeclaredCrs;
import org.lynchet.formats.Feature;
import org.lynchet.formats.FeatureReader;
import org.lynchet.formats.FeatureTable;
import org.lynchet.formats.FeatureWriter;
import org.lynchet.formats.FormatException;
import org.lynchet.formats.geopackage.GeoPackage;
import org.lynchet.formats.kml.Kml;
import org.lynchet.prescription.zone.FieldLayout;

/**
 * Zones, passes and boundary of a plan as layers of one file.
 *
 * @param path the path below the output folder
 * @param purpose what README.txt says of it
 * @param tables the layers
 * @param writer writes them
 * @param reader makes the reader of a layer
 */
record LayeredFile(
    String path,
    String purpose,
    List<FeatureTable> tables,
    LayerWriter writer,
    Function<String, FeatureReader> reader)
    implements WholePlan {
  /** Writes layers to a file. */
  interface LayerWriter {
    void write(List<FeatureTable> tables, Path file) throws IOException;
  }

  static LayeredFile geoPackage(FieldLayout layout) {
    LocalDate date = Objects.requireNonNullElse(layout.plan().date(), FeatureWriter.NO_DATE);
    return new LayeredFile(
        "plan.gpkg",
        "the same with passes and boundary, for a GIS (GeoPackage)",
        layers(layout),
        (tables, file) -> GeoPackage.write(tables, date, file),
        GeoPackage::reader);
  }

  static LayeredFile kml(FieldLayout layout) {
    return new LayeredFile(
        "plan.kml",
        "the same with passes and boundary, for phones (KML)",
        layers(layout),
        Kml::write,
        Kml::reader);
  }

  private static List<FeatureTable> layers(FieldLayout layout) {
    FeatureTable boundary =
        new FeatureTable(
            "boundary",
            DeclaredCrs.LON_LAT,
            List.of(Column.text("field", 254), Column.number("area_m2", 18, 9)),
            List.of(
                new Feature(
                    layout.boundary(),
                    List.of(layout.plan().field().name(), layout.areaSquareMetres()))));
    FeatureTable zones = ZoneTable.of(layout);
    return List.of(
        new FeatureTable("zones", zones.crs(), zones.columns(), zones.features()),
        PassTable.of(layout),
        boundary);
  }

  @Override
  public void write(Path folder) throws IOException {
    writer.write(tables, folder.resolve(path));
  }

  @Override
  public List<String> differences(Path folder) {
    List<String> found = new ArrayList<>();
    for (FeatureTable table : tables) {
      String where = path + " " + table.name() + ": ";
      try {
        FeatureTable read = reader.apply(table.name()).read(folder.resolve(path));
        ReadBack.differences(table, read, true).forEach(what -> found.add(where + what));
      } catch (FormatException e) {
        e.faults().forEach(fault -> found.add(where + fault.what()));
      }
    }
    return found;
  }

  @Override
  public String readme() {
    return "  %-24s %s\n".formatted(path, purpose);
  }
}
