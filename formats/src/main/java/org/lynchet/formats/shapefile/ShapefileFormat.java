package org.lynchet.formats.shapefile;

import java.time.LocalDate;
import java.util.List;
import org.lynchet.formats.Characters;
import org.lynchet.formats.FeatureReader;
import org.lynchet.formats.FeatureWriter;
import org.lynchet.formats.FileFormat;
import org.lynchet.formats.TableLimits;
import org.lynchet.formats.TableLimits.FixedWidth;
import org.lynchet.formats.TableLimits.Kinds;

/** What there is to know of shapefiles. */
final class ShapefileFormat implements FileFormat {
  /** dBASE III. */
  private static final int MOST_COLUMNS = 128;

  /** dBASE III: name, text, number and decimals; Java: bytes of an array. */
  private static final FixedWidth WIDTH = new FixedWidth(10, 254, 18, 9, 2_000_000_000);

  @Override
  public List<String> endings() {
    return List.of(".shp", ".shx", ".dbf", ".prj", ".cpg");
  }

  @Override
  public List<String> readEndings() {
    return List.of(".shp", ".zip");
  }

  @Override
  public FeatureReader reader(String part) {
    return Shapefile.reader();
  }

  @Override
  public FeatureWriter writer(LocalDate date) {
    return Shapefile.writer(date);
  }

  /** Control characters in a .dbf end rows for some readers. */
  @Override
  public TableLimits limits() {
    return new TableLimits(
        MOST_COLUMNS, Characters.NO_CONTROLS, List.of(), Kinds.ONE_IN_ALL, WIDTH);
  }
}
