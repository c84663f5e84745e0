package org.lynchet.prescription.handoff;

import java.io.IOException;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import org.lynchet.formats.Column;
import org.lynchet.formats.DeclaredCrs;
import org.lynchet.formats.Feature;
import org.lynchet.formats.FeatureTable;
import org.lynchet.formats.FeatureWriter;
import org.lynchet.formats.FormatException;
import org.lynchet.formats.LayeredFormat;
import org.lynchet.prescription.zone.FieldLayout;

/**
 * Zones, passes and boundary of a plan as layers of one file.
 *
 * @param path the path below the output folder
 * @param tables the layers
 * @param date what the file says of its date
 * @param format the format
 */
record LayeredFile(String path, List<FeatureTable> tables, LocalDate date, LayeredFormat format)
    implements WholePlan {

  static LayeredFile of(FieldLayout layout, LayeredFormat format) {
    return new LayeredFile(
        "plan" + format.ending(),
        layers(layout),
        Objects.requireNonNullElse(layout.plan().date(), FeatureWriter.NO_DATE),
        format);
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
    format.write(tables, date, folder.resolve(path));
  }

  @Override
  public List<String> differences(Path folder) {
    List<String> found = new ArrayList<>();
    for (FeatureTable table : tables) {
      String where = path + " " + table.name() + ": ";
      try {
        FeatureTable read = format.reader(table.name()).read(folder.resolve(path));
        ReadBack.differences(table, read, true).forEach(what -> found.add(where + what));
      } catch (FormatException e) {
        e.faults().forEach(fault -> found.add(where + fault.what()));
      }
    }
    return found;
  }

  @Override
  public String readme() {
    return "  %-24s %s\n".formatted(path, "the same with passes and boundary, " + format.use());
  }
}
