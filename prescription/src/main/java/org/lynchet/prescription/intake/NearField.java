package org.lynchet.prescription.intake;

import org.locationtech.jts.geom.Geometry;

/**
 * Measures how far a place is from a field, in a rough plane around the field, since a far place
 * has no place in the real one.
 */
final class NearField {
  /** How far the line that machines steer by may be from the field, in metres. */
  static final double FARTHEST = 10_000;

  private NearField() {}

  /** Metres from the box around a boundary; 0 in it. */
  static double metresFrom(Geometry boundary, double longitudeDegrees, double latitudeDegrees) {
    var box = boundary.getEnvelopeInternal();
    double metresPerDegree = Math.PI / 180 * 6_371_008.8;
    double east =
        Math.max(0, Math.max(box.getMinX() - longitudeDegrees, longitudeDegrees - box.getMaxX()));
    double north =
        Math.max(0, Math.max(box.getMinY() - latitudeDegrees, latitudeDegrees - box.getMaxY()));
    return metresPerDegree * Math.hypot(east * Math.cos(Math.toRadians(box.centre().y)), north);
  }
}
