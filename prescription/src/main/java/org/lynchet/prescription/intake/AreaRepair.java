package org.lynchet.prescription.intake;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.jspecify.annotations.Nullable;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.geom.util.GeometryFixer;
import org.locationtech.jts.geom.util.PolygonExtracter;
import org.locationtech.jts.operation.valid.IsValidOp;
import org.locationtech.jts.operation.valid.TopologyValidationError;

/** Takes the polygons out of a geometry, and says where one is not valid. */
final class AreaRepair {
  private AreaRepair() {}

  /** The polygons of a geometry as one polygon or multipolygon; empty if it has none. */
  static Geometry polygonsOf(Geometry geometry) {
    List<Polygon> polygons = new ArrayList<>();
    for (Object polygon : PolygonExtracter.getPolygons(geometry)) {
      if (!((Polygon) polygon).isEmpty()) {
        polygons.add((Polygon) polygon);
      }
    }
    return polygons.size() == 1
        ? polygons.get(0)
        : geometry.getFactory().createMultiPolygon(polygons.toArray(new Polygon[0]));
  }

  /** What is wrong with a polygon and where; null if it is valid. */
  static @Nullable String problem(Geometry area) {
    TopologyValidationError error = new IsValidOp(area).getValidationError();
    if (error == null) {
      return null;
    }
    Coordinate at = error.getCoordinate();
    return String.format(
        Locale.ROOT,
        "%s at longitude %.7f, latitude %.7f",
        error.getMessage().toLowerCase(Locale.ROOT),
        at == null ? Double.NaN : at.x,
        at == null ? Double.NaN : at.y);
  }

  /** The valid area that JTS makes of an invalid one. */
  static Geometry repaired(Geometry area) {
    return polygonsOf(GeometryFixer.fix(area));
  }
}
