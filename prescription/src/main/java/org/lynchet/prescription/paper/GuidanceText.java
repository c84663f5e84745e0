package org.lynchet.prescription.paper;

import java.util.List;
import java.util.Locale;
import org.locationtech.jts.geom.Coordinate;
import org.lynchet.geometry.guidance.Curve;
import org.lynchet.prescription.plan.PlannedGuidance.AbLineIs;
import org.lynchet.prescription.zone.FieldLayout;
import org.lynchet.prescription.zone.PlacedAbLine;

/** Says where the line is that machines steer by, as it was placed. */
final class GuidanceText {
  private GuidanceText() {}

  static String heading(FieldLayout layout) {
    return layout.guidance() instanceof Curve ? "CURVE" : "AB LINE";
  }

  static List<String> lines(FieldLayout layout) {
    if (layout.guidance() instanceof Curve curve) {
      List<Coordinate> points = curve.points();
      return List.of(
          "A: " + place(points.get(0)),
          "B: " + place(points.get(points.size() - 1)),
          String.format(
              Locale.ROOT,
              "headings %.1f\u00b0 to %.1f\u00b0, see guidance/passes.geojson",
              curve.directions().firstHeadingDegrees(),
              curve.directions().lastHeadingDegrees()),
          what(layout));
    }
    PlacedAbLine line = PlacedAbLine.of(layout);
    return List.of(
        "A: " + place(line.a()),
        "B: " + place(line.b()),
        String.format(
            Locale.ROOT, "heading %.3f\u00b0 from true north", layout.frame().headingDegrees()),
        what(layout));
  }

  /** What the line is, so that nobody is off by half a planter. */
  private static String what(FieldLayout layout) {
    String crop = layout.plan().strips().get(0).crop();
    return layout.plan().guidance().abLineIs() == AbLineIs.PASS_CENTRE
        ? "it is the centre of a pass of " + crop
        : "it is the left edge of a strip of " + crop + ", no pass drives on it";
  }

  /**
   * A place with nine decimals, a tenth of a millimetre, latitude first as terminals ask for it.
   */
  static String place(Coordinate lonLat) {
    return String.format(Locale.ROOT, "lat %.9f, lon %.9f", lonLat.y, lonLat.x);
  }
}
