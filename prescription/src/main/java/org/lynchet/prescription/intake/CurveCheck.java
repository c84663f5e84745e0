package org.lynchet.prescription.intake;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.operation.valid.IsSimpleOp;
import org.lynchet.geometry.frame.PlaneFrame;
import org.lynchet.geometry.guidance.Curve;
import org.lynchet.geometry.guidance.CurveDirections;
import org.lynchet.geometry.guidance.CurveTightness;
import org.lynchet.geometry.guidance.TightPlace;
import org.lynchet.prescription.fault.Faults;

/** Makes the guidance of a curve's points, if machines can drive along it over the whole field. */
final class CurveCheck {
  /** Ends that are this near to each other, as a share of the length, close the curve. */
  private static final double CLOSED = 0.02;

  private static final String SPAN =
      String.format(
          Locale.ROOT,
          "a curve whose directions span less than %.0f degrees",
          Curve.WIDEST_SPAN_DEGREES);

  private final String file;
  private final Geometry boundary;
  private final Faults faults;
  private final PlaneFrame plane;

  CurveCheck(String file, Geometry boundary, Faults faults) {
    this.file = file;
    this.boundary = boundary;
    this.faults = faults;
    this.plane = FieldIntake.planeAround(boundary);
  }

  /**
   * The curve, or nothing if there were faults.
   *
   * @param points at least 3, neighbours at different places
   * @param widestPassMetres no curve is shorter than that
   */
  Optional<Curve> curve(List<Coordinate> points, double widestPassMetres) {
    if (!isNear(points)) {
      return Optional.empty();
    }
    CurveDirections directions = CurveDirections.of(points, plane);
    if (!isLong(directions, widestPassMetres) || !isOpen(points, directions)) {
      return Optional.empty();
    }
    Curve curve = Curve.through(points, plane, boundary.getEnvelopeInternal());
    List<TightPlace> tight = new CurveTightness(curve, inFrame(curve)).find();
    tight.forEach(this::faultTight);
    return tight.isEmpty() ? Optional.of(curve) : Optional.empty();
  }

  private boolean isNear(List<Coordinate> points) {
    for (int i = 0; i < points.size(); i++) {
      Coordinate at = points.get(i);
      double distance = NearField.metresFrom(boundary, at.x, at.y);
      if (distance > NearField.FARTHEST) {
        fault(
            String.format(Locale.ROOT, "the curve is %.0f km from the field", distance / 1000),
            ", point " + (i + 1),
            "a curve at most 10 km from the field",
            "check the file, and that x is longitude");
        return false;
      }
    }
    return true;
  }

  private boolean isLong(CurveDirections directions, double widestPass) {
    if (directions.lengthMetres() >= widestPass) {
      return true;
    }
    fault(
        String.format(
            Locale.ROOT,
            "the curve is %.2f m long, less than a pass is wide",
            directions.lengthMetres()),
        "",
        String.format(Locale.ROOT, "a curve of at least %.2f m", widestPass),
        "draw it over the length of the field");
    return false;
  }

  private boolean isOpen(List<Coordinate> points, CurveDirections directions) {
    Coordinate[] at = points.stream().map(p -> plane.toPlane(p.x, p.y)).toArray(Coordinate[]::new);
    if (at[0].distance(at[at.length - 1]) < CLOSED * directions.lengthMetres()) {
      fault(
          "the curve is closed: it ends where it begins",
          "",
          SPAN,
          "pivots and closed curves are not planned; draw a line from edge to edge of the field");
      return false;
    }
    if (Math.toDegrees(directions.spanRadians()) < Curve.WIDEST_SPAN_DEGREES) {
      return true;
    }
    IsSimpleOp simple = new IsSimpleOp(new GeometryFactory().createLineString(at));
    if (!simple.isSimple()) {
      Coordinate crossing = simple.getNonSimpleLocation();
      Coordinate lonLat = plane.toLonLat(crossing.x, crossing.y);
      fault(
          "the curve crosses itself at " + place(lonLat.x, lonLat.y),
          "",
          "a curve that does not cross itself",
          "take the loop out");
      return false;
    }
    int turn = SharpestTurn.of(at);
    fault(
        String.format(
            Locale.ROOT,
            "the curve turns back on itself: its directions span %.0f degrees; it turns most at"
                + " point %d, %s",
            Math.toDegrees(directions.spanRadians()),
            turn + 1,
            place(points.get(turn).x, points.get(turn).y)),
        "",
        SPAN,
        "pivots and spirals are not planned; smooth what turns back where the receiver stood still,"
            + " or plan the sides of the bend as fields of their own");
    return false;
  }

  private Geometry inFrame(Curve curve) {
    Geometry copy = boundary.copy();
    copy.apply((Coordinate at) -> at.setCoordinate(curve.frame().toOffset(at.x, at.y)));
    copy.geometryChanged();
    return copy;
  }

  private void faultTight(TightPlace tight) {
    String place = place(tight.longitudeDegrees(), tight.latitudeDegrees());
    double offset = tight.offsetMetres();
    fault(
        offset == 0
            ? String.format(
                Locale.ROOT,
                "the curve is too tight: it turns by %.0f degrees in one point at %s",
                tight.turnDegrees(),
                place)
            : String.format(
                Locale.ROOT,
                "the curve is too tight for the field: passes follow it as far as %.1f m to the %s;"
                    + " farther out its radius is used up and they would turn by %.0f degrees in one"
                    + " point, first at %s",
                Math.abs(offset),
                offset < 0 ? "left" : "right",
                tight.turnDegrees(),
                place),
        "",
        String.format(
            Locale.ROOT,
            "passes that turn by at most %.0f degrees in one point, all over the field",
            CurveTightness.CORNER_DEGREES),
        "smooth the curve there, lay it on the inside of the bend, or plan that part as a field of"
            + " its own");
  }

  private static String place(double longitude, double latitude) {
    return String.format(Locale.ROOT, "longitude %.6f, latitude %.6f", longitude, latitude);
  }

  private void fault(String what, String place, String allowed, String next) {
    faults.add(what, file + place, allowed, next);
  }
}
