package org.lynchet.formats.shapefile;

import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.locationtech.jts.geom.Geometry;
import org.lynchet.formats.DeclaredCrs;
import org.lynchet.formats.Fault;
import org.lynchet.formats.FaultList;
import org.lynchet.formats.Feature;
import org.lynchet.formats.FeatureReader;
import org.lynchet.formats.FeatureTable;
import org.lynchet.formats.FormatException;
import org.lynchet.formats.InputFile;

/** Reads the shapes and the rows of one shapefile and joins them by their order. */
final class ShapefileReader implements FeatureReader {

  @Override
  public FeatureTable read(Path file) throws FormatException {
    String name = InputFile.name(file).toLowerCase(Locale.ROOT);
    if (name.endsWith(".zip")) {
      return decode(ZipSource.read(file));
    }
    if (name.endsWith(".shp")) {
      return decode(FolderSource.read(file));
    }
    throw new FormatException(
        new Fault(
            "its name ends neither in .shp nor in .zip",
            file.toString(),
            "a .shp with its files beside it, or a .zip of them",
            "name the .shp file"));
  }

  private static FeatureTable decode(ShapefileParts parts) throws FormatException {
    FaultList faults = new FaultList();
    List<Geometry> shapes = new ShpDecoder(parts.shp(), parts.place() + ".shp", faults).decode();
    boolean wholeShp = faults.isEmpty();
    DbfTable rows = rows(parts, shapes.size(), faults);
    if (wholeShp && rows.rows().size() != shapes.size() && faults.isEmpty()) {
      faults.add(
          rows.rows().size() + " rows for " + shapes.size() + " shapes",
          parts.place() + ".dbf",
          "one row for each shape",
          "export the shapefile again, with all of its files");
    }
    faults.throwIfAny();
    return new FeatureTable(parts.name(), crs(parts), rows.columns(), join(shapes, rows.rows()));
  }

  private static DbfTable rows(ShapefileParts parts, int shapes, FaultList faults) {
    byte[] dbf = parts.dbf();
    if (dbf == null) {
      return DbfTable.withoutColumns(shapes);
    }
    String cpg = parts.cpg() == null ? "" : text(parts.cpg());
    return new DbfDecoder(dbf, cpg, parts.place(), faults).decode();
  }

  private static List<Feature> join(List<Geometry> shapes, List<DbfTable.Row> rows) {
    List<Feature> features = new ArrayList<>(shapes.size());
    for (int i = 0; i < shapes.size(); i++) {
      if (!rows.get(i).deleted()) {
        features.add(new Feature(shapes.get(i), rows.get(i).values()));
      }
    }
    return features;
  }

  private static DeclaredCrs crs(ShapefileParts parts) {
    return parts.prj() == null ? DeclaredCrs.NONE : PrjText.declared(text(parts.prj()));
  }

  /** Both small files are ASCII, whatever a name in them may contain. */
  private static String text(byte[] bytes) {
    String text = new String(bytes, StandardCharsets.UTF_8);
    return text.startsWith("\uFEFF") ? text.substring(1) : text;
  }
}
