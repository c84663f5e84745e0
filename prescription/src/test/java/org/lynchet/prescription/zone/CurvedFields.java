package org.lynchet.prescription.zone;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.jspecify.annotations.Nullable;
import org.locationtech.jts.geom.Coordinate;
import org.lynchet.geometry.frame.PlaneFrame;
import org.lynchet.geometry.guidance.Curve;

/** Draws fields with a curve. */
public final class CurvedFields {
  /** The radius of the curve of a ring. */
  public static final double RADIUS = 400;

  /** How far a ring goes to both sides of its middle, in radians. */
  public static final double HALF_ANGLE = 0.2;

  /** Curve and boundary are drawn by chords of 0.4 m: 0.05 mm off; lengths by 4e-8. */
  private static final double STEP = 0.001;

  private CurvedFields() {}

  /** A field along a curve in place of its AB line. */
  static FieldData withCurve(FieldData field, List<Coordinate> curve) {
    PlaneFrame plane =
        PlaneFrame.centredOn(SamplePlans.A.longitudeDegrees(), SamplePlans.A.latitudeDegrees());
    return new FieldData(
        field.boundary(),
        field.managementZones(),
        Curve.through(curve, plane, field.boundary().getEnvelopeInternal()),
        field.warnings(),
        field.waterways());
  }

  /**
   * The sector of a ring, 350 to 450 m around a point; the curve is its middle circle, walked
   * northward with the point on its left.
   *
   * @param waterways drawn in metres, or null for none
   */
  public static FieldData ring(@Nullable String waterways) {
    List<Coordinate> arc = new ArrayList<>();
    for (double angle = -0.3; angle < 0.3; angle += STEP) {
      arc.add(
          SamplePlans.FRAME.toLonLat(RADIUS * Math.cos(angle) - RADIUS, RADIUS * Math.sin(angle)));
    }
    String wkt = sector(350, 450, -HALF_ANGLE, HALF_ANGLE);
    return withCurve(
        waterways == null ? SamplePlans.field(wkt) : SamplePlans.fieldWithWaterways(wkt, waterways),
        arc);
  }

  /** A part of a ring about the same point, in metres, between two radii and two angles. */
  static String sector(double inner, double outer, double lower, double upper) {
    int steps = (int) Math.rint((upper - lower) / STEP);
    StringBuilder text = new StringBuilder("POLYGON ((");
    for (int i = 0; i <= steps; i++) {
      text.append(at(inner, upper - i * STEP)).append(", ");
    }
    for (int i = 0; i <= steps; i++) {
      text.append(at(outer, lower + i * STEP)).append(", ");
    }
    return text + at(inner, upper) + "))";
  }

  private static String at(double radius, double angle) {
    return String.format(
        Locale.ROOT, "%.9f %.9f", radius * Math.cos(angle) - RADIUS, radius * Math.sin(angle));
  }
}
