package org.lynchet.formats.crs;

import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Rewrites well-known text of ESRI's and GDAL's dialects so that GeoTools takes it as it is meant.
 *
 * <ul>
 *   <li>AXIS is taken out: x is easting or longitude in a file whatever it says; so is AUTHORITY.
 *   <li>The web maps' Mercator, computed on a sphere, gets a name that says so. GDAL tells it by an
 *       EXTENSION with its parameters, ESRI by the name of the projection.
 *   <li>ESRI turns Krovak's axes to the east and north by three parameters (-1, 1, 90); GeoTools
 *       does so without being told, and would turn them a second time.
 * </ul>
 *
 * What has other values there is left as it is, and refused later as not known.
 */
final class WktDialect {
  private static final Pattern EXTRAS =
      Pattern.compile(
          "(?i),\\s*(?:AUTHORITY\\s*\\[\\s*\"[^\"]*\"\\s*,\\s*\"?[^\"\\]]*\"?\\s*\\]"
              + "|AXIS\\s*\\[\\s*\"[^\"]*\"\\s*,\\s*\\w+\\s*\\])");
  private static final Pattern SPHERE =
      Pattern.compile(
          "(?i),\\s*EXTENSION\\s*\\[\\s*\"PROJ4\"\\s*,"
              + "\\s*\"\\+proj=merc \\+a=6378137 \\+b=6378137 [^\"]*\"\\s*\\]");
  private static final Pattern SPHERE_PARAMETER =
      Pattern.compile(
          "(?i),\\s*PARAMETER\\s*\\[\\s*\"Auxiliary_Sphere_Type\"\\s*,\\s*0[.0]*\\s*\\]");
  private static final Pattern MERCATOR =
      Pattern.compile("(?i)PROJECTION\\s*\\[\\s*\"Mercator_(?:1SP|Auxiliary_Sphere)\"\\s*\\]");
  private static final Pattern TURNED_KROVAK =
      Pattern.compile(
          "(?i),\\s*PARAMETER\\s*\\[\\s*\"X_Scale\"\\s*,\\s*-1[.0]*\\s*\\]"
              + ",\\s*PARAMETER\\s*\\[\\s*\"Y_Scale\"\\s*,\\s*1[.0]*\\s*\\]"
              + ",\\s*PARAMETER\\s*\\[\\s*\"XY_Plane_Rotation\"\\s*,\\s*90[.0]*\\s*\\]");
  private static final Pattern KROVAK_PARAMETER =
      Pattern.compile("(?i)\"(?:[XY]_Scale|XY_Plane_Rotation)\"");

  private WktDialect() {}

  static String of(String text) {
    String plain = EXTRAS.matcher(text).replaceAll("");
    plain = TURNED_KROVAK.matcher(plain).replaceAll("");
    if (KROVAK_PARAMETER.matcher(plain).find()) {
      return plain.replaceAll("(?i)\"Krovak\"", "\"Krovak with other axes\"");
    }
    return onSphere(plain);
  }

  private static String onSphere(String wkt) {
    Matcher extension = SPHERE.matcher(wkt);
    boolean sphere =
        extension.find()
            || wkt.contains("Pseudo-Mercator")
            || wkt.contains("\"Mercator_Auxiliary_Sphere\"");
    if (!sphere) {
      return wkt;
    }
    String plain = SPHERE_PARAMETER.matcher(SPHERE.matcher(wkt).replaceAll("")).replaceAll("");
    return MERCATOR
        .matcher(plain)
        .replaceAll("PROJECTION[\"Popular Visualisation Pseudo Mercator\"]");
  }
}
