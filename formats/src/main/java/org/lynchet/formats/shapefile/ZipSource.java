package org.lynchet.formats.shapefile;

import java.nio.file.Path;
import java.util.List;
import org.lynchet.formats.Fault;
import org.lynchet.formats.FormatException;
import org.lynchet.formats.PackedFiles;

/** Reads the one shapefile in a .zip. */
final class ZipSource {
  private ZipSource() {}

  static ShapefileParts read(Path file) throws FormatException {
    try (PackedFiles zip = PackedFiles.open(file)) {
      return read(file, zip);
    }
  }

  private static ShapefileParts read(Path file, PackedFiles zip) throws FormatException {
    List<String> shapefiles = zip.names().stream().filter(n -> n.endsWith(".shp")).toList();
    byte[] shp = shapefiles.size() == 1 ? zip.find(shapefiles.get(0)) : null;
    if (shp == null) {
      throw new FormatException(
          new Fault(
              shapefiles.isEmpty() ? "no .shp in it" : "several in it: " + shapefiles,
              file.toString(),
              "one shapefile in a .zip",
              "pack the shapefile again"));
    }
    String lower = withoutExtension(shapefiles.get(0));
    String path = withoutExtension(zip.written(shapefiles.get(0)));
    return new ShapefileParts(
        path.substring(path.lastIndexOf('/') + 1),
        file + "!/" + path,
        shp,
        zip.find(lower + ".dbf"),
        zip.find(lower + ".prj"),
        zip.find(lower + ".cpg"));
  }

  private static String withoutExtension(String name) {
    return name.substring(0, name.lastIndexOf('.'));
  }
}
