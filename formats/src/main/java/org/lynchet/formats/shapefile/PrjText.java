package org.lynchet.formats.shapefile;

import java.util.Locale;
import java.util.regex.Pattern;
import org.lynchet.formats.DeclaredCrs;

/** Holds the .prj text that is written and recognises its like in files that are read. */
final class PrjText {
  /** WGS 84 in ESRI's well-known text; 145 bytes, as {@code projinfo EPSG:4326 -o WKT1_ESRI}. */
  static final String LON_LAT =
      "GEOGCS[\"GCS_WGS_1984\",DATUM[\"D_WGS_1984\","
          + "SPHEROID[\"WGS_1984\",6378137.0,298.257223563]],"
          + "PRIMEM[\"Greenwich\",0.0],UNIT[\"Degree\",0.0174532925199433]]";

  /** What may be left out without changing the meaning; x is always the longitude in a .shp. */
  private static final Pattern EXTRAS =
      Pattern.compile(",(?:AUTHORITY\\[[^\\]]*\\]|AXIS\\[[^\\]]*\\]|TOWGS84\\[[0.,]*\\])");

  private static final Pattern WGS_84 =
      Pattern.compile(
          "GEOGCS\\[\"[^\"]*\",DATUM\\[\"(?:D_)?WGS_?1984\","
              + "SPHEROID\\[\"[^\"]*\",6378137(?:\\.0*)?,298\\.257223563\\d*\\]\\],"
              + "PRIMEM\\[\"GREENWICH\",0(?:\\.0*)?\\],"
              + "UNIT\\[\"DEGREES?\",0\\.0174532925199\\d*\\]\\]");

  private PrjText() {}

  /**
   * What a .prj declares: {@link DeclaredCrs#LON_LAT} if it is plainly WGS 84 in degrees, nothing
   * if it is blank, else the text as it stands.
   */
  static DeclaredCrs declared(String text) {
    String plain = text.replaceAll("\\s+", "").toUpperCase(Locale.ROOT);
    if (plain.isEmpty()) {
      return DeclaredCrs.NONE;
    }
    boolean lonLat = WGS_84.matcher(EXTRAS.matcher(plain).replaceAll("")).matches();
    return lonLat ? DeclaredCrs.LON_LAT : DeclaredCrs.wkt(text.strip());
  }
}
