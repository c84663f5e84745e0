package org.lynchet.formats.crs;

import java.util.Locale;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.lynchet.formats.Excerpt;
import org.lynchet.formats.Fault;
import org.lynchet.formats.FormatException;

/**
 * The well-known text of one system that is understood for certain.
 *
 * @param wkt geographic or projected, in the dialect of {@link WktDialect}
 * @param datum the name of its datum
 * @param shifted whether it brings its own shift
 */
record SystemText(String wkt, String datum, boolean shifted) {
  private static final int MAX_SHOWN = 60;

  /** Far longer than any text of one system. */
  private static final int MAX_LENGTH = 10_000;

  /** The projections that GeoTools 33.1 was found to do as PROJ 9.1.1 does, over all EPSG codes. */
  private static final Set<String> PROJECTIONS =
      Set.of(
          "albers",
          "albers_conic_equal_area",
          "cassini",
          "cassini_soldner",
          "double_stereographic",
          "equidistant_cylindrical",
          "equirectangular",
          "gauss_kruger",
          "hotine_oblique_mercator",
          "hotine_oblique_mercator_azimuth_center",
          "hotine_oblique_mercator_azimuth_natural_origin",
          "krovak",
          "lambert_azimuthal_equal_area",
          "lambert_conformal_conic",
          "lambert_conformal_conic_1sp",
          "lambert_conformal_conic_2sp",
          "mercator",
          "mercator_1sp",
          "mercator_2sp",
          "new_zealand_map_grid",
          "oblique_stereographic",
          "polyconic",
          "popular visualisation pseudo mercator",
          "rectified_skew_orthomorphic_center",
          "rectified_skew_orthomorphic_natural_origin",
          "transverse_mercator");

  private static final Pattern START = Pattern.compile("(?is)\\s*(?:PROJCS|GEOGCS)\\s*\\[.*");
  private static final Pattern TURNED =
      Pattern.compile("(?i)AXIS\\s*\\[\\s*\"[^\"]*\"\\s*,\\s*(?:SOUTH|WEST)\\s*\\]");
  private static final Pattern DATUM =
      Pattern.compile("(?i)DATUM\\s*\\[\\s*\"([^\"]*)\"\\s*,\\s*SPHEROID\\s*\\[[^\\]]*\\]");
  private static final Pattern PROJECTION =
      Pattern.compile("(?i)PROJECTION\\s*\\[\\s*\"([^\"]*)\"\\s*\\]");
  private static final Pattern MERIDIAN =
      Pattern.compile("(?i)PRIMEM\\s*\\[\\s*\"[^\"]*\"\\s*,\\s*(?!0(?:\\.0*)?\\s*\\])");
  private static final Pattern OWN_SHIFT = Pattern.compile("(?i)TOWGS84\\s*\\[");

  /**
   * Reads a text.
   *
   * @throws FormatException if it isn't WKT 1 of a geographic or projected system from Greenwich
   *     with axes to the east and north, or its projection is not one that was checked
   */
  static SystemText of(String text, String where) throws FormatException {
    if (text.length() > MAX_LENGTH || !START.matcher(text).matches()) {
      throw fault("its coordinate system is not understood", text, where);
    }
    if (TURNED.matcher(text).find()) {
      throw fault("its coordinate system counts to the west or south", text, where);
    }
    if (MERIDIAN.matcher(text).find()) {
      throw fault("its coordinate system does not count from Greenwich", text, where);
    }
    String plain = WktDialect.of(text);
    Matcher projection = PROJECTION.matcher(plain);
    if (projection.find() && !PROJECTIONS.contains(projection.group(1).toLowerCase(Locale.ROOT))) {
      throw fault("its projection is not known: " + projection.group(1), text, where);
    }
    Matcher datum = DATUM.matcher(plain);
    if (!datum.find()) {
      throw fault("its coordinate system has no datum", text, where);
    }
    return new SystemText(plain, datum.group(1), OWN_SHIFT.matcher(plain).find());
  }

  /** The text with that shift in it, unless it has its own. */
  String with(DatumShift shift) {
    Matcher found = DATUM.matcher(wkt);
    return shifted || !found.find()
        ? wkt
        : wkt.substring(0, found.end())
            + ",TOWGS84["
            + shift.toWgs84()
            + "]"
            + wkt.substring(found.end());
  }

  private static FormatException fault(String what, String text, String where) {
    return new FormatException(
        new Fault(
            what + ": " + Excerpt.of(text.strip(), MAX_SHOWN),
            where,
            "well-known text (WKT 1) of a geographic or projected system, east and north positive",
            "export it in WGS 84 longitude and latitude"));
  }
}
