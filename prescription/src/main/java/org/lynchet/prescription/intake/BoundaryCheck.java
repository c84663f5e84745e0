package org.lynchet.prescription.intake;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.operation.union.UnaryUnionOp;
import org.lynchet.formats.Feature;
import org.lynchet.formats.FeatureTable;
import org.lynchet.prescription.fault.Faults;
import org.lynchet.prescription.fault.Warning;
import org.lynchet.prescription.plan.PlannedField;
import org.lynchet.prescription.quantity.ShownUnits;

/** Makes one valid boundary of the features of a table. */
final class BoundaryCheck {
  private final PlannedField field;
  private final ShownUnits units;
  private final Faults faults;
  private final List<Warning> warnings;

  BoundaryCheck(PlannedField field, ShownUnits units, Faults faults, List<Warning> warnings) {
    this.field = field;
    this.units = units;
    this.faults = faults;
    this.warnings = warnings;
  }

  /** The boundary, or nothing if there were faults. */
  Optional<Geometry> check(FeatureTable table) {
    int before = faults.list().size();
    List<Geometry> areas = new ArrayList<>();
    for (int i = 0; i < table.features().size(); i++) {
      Feature feature = table.features().get(i);
      Geometry polygons = FieldOutline.polygonsOf(feature.geometry());
      if (!polygons.isEmpty() && checkPlace(polygons, i)) {
        checkValid(polygons, i).ifPresent(areas::add);
      }
    }
    if (areas.isEmpty() && faults.list().size() == before) {
      fault(
          "the boundary has no polygon",
          "",
          "at least one polygon",
          "draw the field's outline as an area, not as a line or a point");
    }
    if (faults.list().size() > before) {
      return Optional.empty();
    }
    Geometry whole = areas.size() == 1 ? areas.get(0) : UnaryUnionOp.union(areas);
    return checkSize(whole) ? Optional.of(whole) : Optional.empty();
  }

  /** Whether all vertices can be longitudes and latitudes that a field can have. */
  private boolean checkPlace(Geometry polygons, int feature) {
    Envelope box = polygons.getEnvelopeInternal();
    Coordinate[] coordinates = polygons.getCoordinates();
    for (int v = 0; v < coordinates.length; v++) {
      Coordinate at = coordinates[v];
      if (!(Math.abs(at.x) <= 180 && Math.abs(at.y) <= 90)) {
        fault(
            String.format(Locale.ROOT, "vertex %d is outside the earth: %s, %s", v + 1, at.x, at.y),
            place(feature),
            "longitude -180 to 180, latitude -90 to 90, in this order",
            "check the coordinate system of the file, and that x is longitude");
        return false;
      }
      if (Math.abs(at.y) > FieldOutline.HIGHEST_LATITUDE) {
        fault(
            String.format(Locale.ROOT, "vertex %d is within 1 degree of a pole", v + 1),
            place(feature),
            "latitude -89 to 89",
            "nothing can be planted there; check the coordinates");
        return false;
      }
    }
    if (box.getWidth() > 180) {
      fault(
          "the boundary crosses the antimeridian (longitude 180)",
          place(feature),
          "a field on one side of it",
          "plan the two sides as two fields");
      return false;
    }
    return true;
  }

  private Optional<Geometry> checkValid(Geometry polygons, int feature) {
    String problem = AreaRepair.problem(polygons);
    if (problem == null) {
      return Optional.of(polygons);
    }
    if (!field.repair()) {
      fault(
          "the boundary is not a valid area: " + problem,
          place(feature),
          FieldOutline.VALID_AREA,
          AreaRepair.NEXT);
      return Optional.empty();
    }
    Geometry repaired = AreaRepair.repaired(polygons);
    if (repaired.isEmpty()) {
      fault(
          "the boundary has no area: " + problem,
          place(feature),
          "a polygon with area",
          "draw the field's outline again");
      return Optional.empty();
    }
    double before = Math.abs(FieldOutline.squareMetres(polygons, repaired));
    double after = FieldOutline.squareMetres(repaired, repaired);
    warnings.add(
        new Warning(
            Warning.Code.BOUNDARY_REPAIRED,
            String.format(
                Locale.ROOT,
                "the boundary was repaired (%s): area %s before, %s after, a change of %s%s; check"
                    + " the map",
                problem,
                units.area(before),
                units.area(after),
                after < before ? "-" : "+",
                units.area(Math.abs(after - before)))));
    return Optional.of(repaired);
  }

  private boolean checkSize(Geometry whole) {
    Envelope box = whole.getEnvelopeInternal();
    if (box.getWidth() > 180) {
      fault(
          "the boundary crosses the antimeridian (longitude 180)",
          "",
          "a field on one side of it",
          "plan the two sides as two fields");
      return false;
    }
    double across = FieldOutline.metresAcross(whole);
    if (across > FieldOutline.LARGEST_METRES) {
      fault(
          String.format(Locale.ROOT, "the boundary is %.1f km across", across / 1000),
          "",
          "a field of at most 20 km",
          "check the coordinates, or plan its parts as fields of their own");
      return false;
    }
    return true;
  }

  private static String place(int feature) {
    return ", feature " + (feature + 1);
  }

  private void fault(String what, String place, String allowed, String next) {
    faults.add(what, field.boundary() + place, allowed, next);
  }
}
