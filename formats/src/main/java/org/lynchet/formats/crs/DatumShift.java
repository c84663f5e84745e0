package org.lynchet.formats.crs;

/**
 * One published transformation of a datum to WGS 84.
 *
 * @param code its EPSG code; 0 for WGS 84 itself
 * @param accuracyMetres what EPSG says of it
 * @param west where it holds, in degrees; east of {@code east} if the area crosses the antimeridian
 * @param toWgs84 the seven parameters of TOWGS84, parted by commas: metres, arc seconds as
 *     position-vector rotations, parts per million
 */
record DatumShift(
    int code,
    double accuracyMetres,
    double west,
    double south,
    double east,
    double north,
    String toWgs84) {
  /** A shift less accurate than this is not used, in metres. */
  static final double MAX_ACCURACY_METRES = 5;

  /** Nothing to do. */
  static final DatumShift NONE = new DatumShift(0, 0, -180, -90, 180, 90, "0,0,0,0,0,0,0");

  boolean holdsAt(double lon, double lat) {
    boolean between = west <= east ? lon >= west && lon <= east : lon >= west || lon <= east;
    return between && lat >= south && lat <= north;
  }

  /**
   * The size of the area in square degrees: of two shifts the one for the smaller area is meant.
   */
  double size() {
    double width = west <= east ? east - west : east - west + 360;
    return width * (north - south);
  }
}
