package org.lynchet.formats.geojson;

import org.lynchet.formats.FeatureReader;
import org.lynchet.formats.FeatureWriter;
import org.lynchet.formats.FileFormat;

/** Opens the reader and the writer of GeoJSON. */
public final class GeoJson {
  /** What there is to know of the format. */
  public static final FileFormat FORMAT = new GeoJsonFormat();

  private GeoJson() {}

  /**
   * Reads a feature collection, a feature or a geometry.
   *
   * <p>The columns are all names of properties, in the order in which they first occur. A column
   * whose values are all numbers is of numbers, all true or false of flags, else of texts; numbers
   * with more digits than a double keeps make a column of texts. An object or array as a value
   * becomes its JSON text. A collection of nothing but polygons becomes one multipolygon.
   */
  public static FeatureReader reader() {
    return new GeoJsonReader();
  }

  /**
   * Writes a feature collection in UTF-8, one feature in a line, with the table's name as its name;
   * coordinates with at most nine decimals of a degree (0.1 mm), outer rings counter-clockwise.
   */
  public static FeatureWriter writer() {
    return new GeoJsonWriter();
  }
}
