package org.lynchet.integration.witness;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;

/** Copies the files that GDAL made, so that a test may use or break them. */
public final class Sample {
  private static final String FOLDER = "/org/lynchet/integration/sample/";

  private Sample() {}

  /** Copies strips.shp, .shx, .dbf, .prj and .cpg into a folder; gives the .shp. */
  public static Path shapefile(Path folder) throws IOException {
    for (String extension : List.of("shp", "shx", "dbf", "prj", "cpg")) {
      copy("strips." + extension, folder);
    }
    return folder.resolve("strips.shp");
  }

  /** Copies the GeoJSON that follows RFC 7946 into a folder. */
  public static Path geoJson(Path folder) throws IOException {
    return copy("strips.geojson", folder);
  }

  /** Copies the GeoJSON that both others were made of into a folder. */
  public static Path source(Path folder) throws IOException {
    return copy("strips.json", folder);
  }

  private static Path copy(String name, Path folder) throws IOException {
    try (InputStream in = Sample.class.getResourceAsStream(FOLDER + name)) {
      if (in == null) {
        throw new IOException("no " + name + " on the class path");
      }
      Path copy = folder.resolve(name);
      Files.write(copy, in.readAllBytes());
      return copy;
    }
  }
}
