package org.lynchet.formats;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.io.ParseException;
import org.locationtech.jts.io.WKTReader;

/** Makes small tables for tests. */
public final class Samples {
  /** An outer ring drawn counter-clockwise with a hole drawn counter-clockwise. */
  public static final String HOLED =
      "POLYGON ((-94 43, -93.99 43, -93.99 43.01, -94 43.01, -94 43),"
          + " (-93.998 43.002, -93.996 43.002, -93.996 43.004, -93.998 43.004, -93.998 43.002))";

  /** Two parts, the first drawn clockwise. */
  public static final String TWO =
      "MULTIPOLYGON (((-93 43, -93 43.01, -92.99 43.01, -92.99 43, -93 43)),"
          + " ((-92 43, -91.99 43, -91.99 43.01, -92 43)))";

  private Samples() {}

  /** Reads well-known text. */
  public static Geometry wkt(String text) {
    try {
      return new WKTReader().read(text);
    } catch (ParseException e) {
      throw new IllegalArgumentException(e);
    }
  }

  /** A feature from well-known text. */
  public static Feature feature(String wkt, @Nullable Object... values) {
    return new Feature(wkt(wkt), new ArrayList<@Nullable Object>(Arrays.asList(values)));
  }

  /** A table in longitude and latitude. */
  public static FeatureTable table(List<Column> columns, Feature... features) {
    return new FeatureTable("sample", DeclaredCrs.LON_LAT, columns, List.of(features));
  }

  /** A table of two areas with a text, a number and a flag. */
  public static FeatureTable planting() {
    return table(
        List.of(Column.text("PRODUCT", 12), Column.number("RATE", 10, 2), Column.flag("PARTIAL")),
        feature(HOLED, "Grünmais", 34000.125, true),
        feature(TWO, "tall-108", 0.0, false));
  }
}
