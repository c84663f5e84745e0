package org.lynchet.prescription.intake;

import java.util.Locale;
import org.jspecify.annotations.Nullable;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.util.GeometryFixer;
import org.locationtech.jts.operation.valid.IsValidOp;
import org.locationtech.jts.operation.valid.TopologyValidationError;

/** Says where an area is not valid, and mends it. */
final class AreaRepair {
  /** What to do about an area that is not valid, in a fault. */
  static final String NEXT =
      "redraw it there, or set field.repair: true to take the nearest valid area";

  private AreaRepair() {}

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
    return FieldOutline.polygonsOf(GeometryFixer.fix(area));
  }
}
