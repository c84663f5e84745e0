package org.lynchet.integration.witness.shapefile;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.lynchet.integration.witness.Finding;
import org.lynchet.integration.witness.Findings;

/** Checks every byte of a shapefile of polygons that carries a prescription. */
public final class ShapefileBytes {

  /**
   * WGS 84 longitude and latitude in ESRI well-known text, 145 bytes; what {@code projinfo
   * EPSG:4326 -o WKT1_ESRI --single-line} (PROJ) prints and what GDAL writes.
   */
  public static final String WGS_84 =
      "GEOGCS[\"GCS_WGS_1984\",DATUM[\"D_WGS_1984\","
          + "SPHEROID[\"WGS_1984\",6378137.0,298.257223563]],"
          + "PRIMEM[\"Greenwich\",0.0],UNIT[\"Degree\",0.0174532925199433]]";

  private final Path main;
  private final Findings findings = new Findings();

  private ShapefileBytes(Path main) {
    this.main = main;
  }

  /**
   * Looks at the .shp and at the .shx, .dbf, .prj and .cpg beside it.
   *
   * @return what is wrong; empty if nothing is
   * @throws IOException if a file that is there cannot be read
   */
  public static List<Finding> inspect(Path shp) throws IOException {
    ShapefileBytes check = new ShapefileBytes(shp);
    check.checkMainAndIndexAndTable();
    check.checkText(".prj", ShapefileRule.PROJECTION, WGS_84);
    check.checkText(".cpg", ShapefileRule.ENCODING, "UTF-8");
    return check.findings.list();
  }

  private void checkMainAndIndexAndTable() throws IOException {
    Optional<FileBytes> shp = read(".shp");
    Optional<FileBytes> shx = read(".shx");
    Optional<FileBytes> dbf = read(".dbf");
    if (shp.isEmpty()) {
      return;
    }
    List<ShpRecord> records = ShpFile.check(shp.get(), findings);
    shx.ifPresent(file -> ShxFile.check(file, shp.get(), records, findings));
    dbf.ifPresent(file -> DbfFile.check(file, records.size(), findings));
  }

  private void checkText(String extension, ShapefileRule rule, String expected) throws IOException {
    Optional<FileBytes> file = read(extension);
    if (file.isPresent()) {
      byte[] bytes = file.get().slice(0, file.get().size());
      String text = new String(bytes, StandardCharsets.ISO_8859_1);
      findings.addUnlessEqual(rule, file.get().name(), text, expected);
    }
  }

  private Optional<FileBytes> read(String extension) throws IOException {
    String name = main.getFileName().toString();
    String base = name.substring(0, name.length() - 4);
    Path file = main.resolveSibling(base + extension);
    if (!Files.isRegularFile(file)) {
      findings.add(ShapefileRule.FILES, file.getFileName().toString(), "is missing");
      return Optional.empty();
    }
    return Optional.of(FileBytes.read(file));
  }
}
