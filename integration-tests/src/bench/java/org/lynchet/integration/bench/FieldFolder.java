package org.lynchet.integration.bench;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.locationtech.jts.geom.Geometry;
import org.lynchet.integration.witness.coverage.Polygons;

/** Reads field boundaries out of a folder of GeoJSON files. */
public final class FieldFolder {
  private FieldFolder() {}

  /**
   * The boundaries of the folder that the property {@code lynchet.fields} names.
   *
   * @throws IllegalStateException if the property is not set
   */
  public static List<Geometry> ofProperty() throws IOException {
    String folder = System.getProperty("lynchet.fields", "");
    if (folder.isEmpty()) {
      throw new IllegalStateException("-Dlynchet.fields=FOLDER names no folder of boundaries");
    }
    return read(Path.of(folder));
  }

  /**
   * All polygons of all files that end in .geojson, by file name and place in the file.
   *
   * @return longitude and latitude in degrees; invalid ones mended by a buffer of 0
   */
  public static List<Geometry> read(Path folder) throws IOException {
    List<Path> files;
    try (Stream<Path> all = Files.list(folder)) {
      files = all.filter(file -> file.toString().endsWith(".geojson")).sorted().toList();
    }
    List<Geometry> fields = new ArrayList<>();
    for (Path file : files) {
      for (Geometry field : Polygons.read(file)) {
        Geometry valid = field.isValid() ? field : field.buffer(0);
        if (!valid.isEmpty()) {
          fields.add(valid);
        }
      }
    }
    return fields;
  }
}
