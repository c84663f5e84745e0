package org.lynchet.formats.shapefile;

import java.time.LocalDate;
import org.lynchet.formats.FeatureReader;
import org.lynchet.formats.FeatureWriter;
import org.lynchet.formats.FileFormat;

/** Opens the reader and the writers of shapefiles. */
public final class Shapefile {
  /** What there is to know of the format. */
  public static final FileFormat FORMAT = new ShapefileFormat();

  private Shapefile() {}

  /**
   * Reads a .shp and the files beside it, or a .zip that holds one shapefile; the case of the
   * extensions does not matter. Without a .dbf the table has no columns; without a .prj its
   * coordinate system is not declared; the .shx isn't needed. Rows that the .dbf marks as deleted
   * are left out with their shapes. A date column is read as text (YYYYMMDD).
   */
  public static FeatureReader reader() {
    return new ShapefileReader();
  }

  /** Writes .shp, .shx, .dbf, .prj and .cpg, dated {@link FeatureWriter#NO_DATE}. */
  public static FeatureWriter writer() {
    return writer(FeatureWriter.NO_DATE);
  }

  /**
   * Writes .shp, .shx, .dbf, .prj and .cpg.
   *
   * @param date the date in the .dbf, 1900 to 2155
   * @throws IllegalArgumentException for another year
   */
  public static FeatureWriter writer(LocalDate date) {
    return new ShapefileWriter(date);
  }
}
