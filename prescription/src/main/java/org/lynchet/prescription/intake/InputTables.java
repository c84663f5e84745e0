package org.lynchet.prescription.intake;

import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import org.lynchet.formats.FeatureReader;
import org.lynchet.formats.FeatureTable;
import org.lynchet.formats.FormatException;
import org.lynchet.formats.crs.LonLat;
import org.lynchet.formats.crs.LonLatTable;
import org.lynchet.formats.csv.VertexCsv;
import org.lynchet.formats.geojson.GeoJson;
import org.lynchet.formats.geopackage.GeoPackage;
import org.lynchet.formats.isoxml.TaskData;
import org.lynchet.formats.kml.Kml;
import org.lynchet.formats.shapefile.Shapefile;
import org.lynchet.prescription.fault.Faults;
import org.lynchet.prescription.fault.Warning;

/** Reads files by their ending, and takes them to longitude and latitude. */
final class InputTables {
  private static final String ENDINGS =
      ".geojson, .json, .shp, .csv, .kml, .kmz, .gpkg, .zip (of a shapefile or of task data) or"
          + " .xml (of task data)";

  private final NamedBy namedBy;
  private final Faults faults;
  private final List<Warning> warnings;

  InputTables(NamedBy namedBy, Faults faults, List<Warning> warnings) {
    this.namedBy = namedBy;
    this.faults = faults;
    this.warnings = warnings;
  }

  /** The table of a file, in longitude and latitude; empty if there were faults. */
  Optional<FeatureTable> read(String name, String key) {
    return read(name, key, VertexCsv.reader(), TaskData::boundaryReader);
  }

  /** The same for a file of lines. */
  Optional<FeatureTable> readLines(String name, String key) {
    return read(name, key, VertexCsv.lineReader(), TaskDataCurve::new);
  }

  private Optional<FeatureTable> read(
      String name, String key, FeatureReader csv, Function<String, FeatureReader> taskData) {
    NamedPart named = NamedPart.of(name);
    Optional<Path> file = find(named.file(), key);
    if (file.isEmpty()) {
      return Optional.empty();
    }
    try {
      Optional<FeatureReader> reader = reader(named, file.get(), csv, taskData);
      if (reader.isEmpty()) {
        faults.add(
            "a file of this kind cannot be read: " + name,
            namedBy.place() + key,
            ENDINGS,
            "save it as one of these");
        return Optional.empty();
      }
      LonLatTable lonLat = LonLat.of(reader.get().read(file.get()), name);
      for (String note : lonLat.notes()) {
        warnings.add(
            new Warning(
                Warning.Code.COORDINATE_SYSTEM, name + ": " + note + " Check where the map lies."));
      }
      return Optional.of(lonLat.table());
    } catch (FormatException e) {
      faults.addAll(e);
      return Optional.empty();
    }
  }

  /** The reader of a file by its ending; of a .zip, by what is in it. */
  private static Optional<FeatureReader> reader(
      NamedPart named, Path file, FeatureReader csv, Function<String, FeatureReader> taskData)
      throws FormatException {
    return switch (named.ending()) {
      case ".geojson", ".json" -> Optional.of(GeoJson.reader());
      case ".shp" -> Optional.of(Shapefile.reader());
      case ".csv" -> Optional.of(csv);
      case ".zip" ->
          Optional.of(TaskData.isIn(file) ? taskData.apply(named.part()) : Shapefile.reader());
      case ".kml", ".kmz" -> Optional.of(Kml.reader(named.part()));
      case ".gpkg" -> Optional.of(GeoPackage.reader(named.part()));
      case ".xml" -> Optional.of(taskData.apply(named.part()));
      default -> Optional.empty();
    };
  }

  /** The place of a file, if there is such a file; else a fault is added. */
  Optional<Path> find(String name, String key) {
    try {
      Path folder = namedBy.folder();
      Path file = folder == null ? Path.of(name) : folder.resolve(name);
      if (Files.isRegularFile(file)) {
        return Optional.of(file);
      }
      faults.add(
          (Files.exists(file) ? "not a file: " : "no such file: ") + name,
          namedBy.place() + key,
          namedBy.allowed(),
          "check the name and where the file lies; looked for " + file);
    } catch (InvalidPathException e) {
      faults.add(
          "not a file name: " + name, namedBy.place() + key, namedBy.allowed(), "check the name");
    }
    return Optional.empty();
  }
}
