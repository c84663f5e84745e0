package org.lynchet.formats.shapefile;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import org.lynchet.formats.DeclaredCrs;
import org.lynchet.formats.FeatureTable;
import org.lynchet.formats.FeatureWriter;
import org.lynchet.formats.InputFile;

/** Writes a table as the five files of a shapefile, after everything in it has been checked. */
final class ShapefileWriter implements FeatureWriter {
  private final LocalDate date;

  ShapefileWriter(LocalDate date) {
    if (date.getYear() < 1900 || date.getYear() > 2155) {
      throw new IllegalArgumentException("a .dbf holds the years 1900 to 2155, not " + date);
    }
    this.date = date;
  }

  @Override
  public void write(FeatureTable table, Path file) throws IOException {
    if (!table.crs().equals(DeclaredCrs.LON_LAT)) {
      throw new IllegalArgumentException("not in longitude and latitude: " + table.crs().kind());
    }
    if (!InputFile.name(file).endsWith(".shp")) {
      throw new IllegalArgumentException("a shapefile's name ends with .shp, not " + file);
    }
    ShpEncoder shapes = ShpEncoder.of(table.features());
    byte[] rows = new DbfEncoder(table.columns(), date).encode(table.features());
    String base = InputFile.baseName(file);
    Files.write(file, shapes.shp());
    Files.write(file.resolveSibling(base + ".shx"), shapes.shx());
    Files.write(file.resolveSibling(base + ".dbf"), rows);
    writeText(file.resolveSibling(base + ".prj"), PrjText.LON_LAT);
    writeText(file.resolveSibling(base + ".cpg"), "UTF-8");
  }

  private static void writeText(Path file, String text) throws IOException {
    Files.write(file, text.getBytes(StandardCharsets.US_ASCII));
  }
}
