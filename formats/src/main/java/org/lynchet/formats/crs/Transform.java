package org.lynchet.formats.crs;

import java.util.regex.Pattern;
import org.geotools.api.referencing.FactoryException;
import org.geotools.api.referencing.crs.CoordinateReferenceSystem;
import org.geotools.api.referencing.operation.MathTransform;
import org.geotools.api.referencing.operation.TransformException;
import org.geotools.referencing.crs.DefaultGeographicCRS;
import org.geotools.referencing.factory.ReferencingObjectFactory;
import org.geotools.referencing.operation.DefaultCoordinateOperationFactory;
import org.geotools.util.factory.Hints;
import org.jspecify.annotations.Nullable;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.CoordinateSequence;
import org.locationtech.jts.geom.CoordinateSequenceFilter;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Geometry;
import org.lynchet.formats.Fault;
import org.lynchet.formats.FormatException;

/**
 * Transforms coordinates of one system to longitude and latitude; the only user of GeoTools.
 *
 * <p>Against PROJ 9.1.1: within 1 mm if the shift changes nothing, else within 1 cm; 2 cm for a
 * transverse Mercator 10 degrees away from its meridian. That is the better of GeoTools' two ways
 * in each case: Molodensky's formulas are exact for a shift of nothing and off by up to some
 * centimetres for others; the way over geocentric coordinates stops its search for the latitude at
 * about 5 mm.
 */
final class Transform {
  private static final Pattern NO_SHIFT = Pattern.compile("(?i)TOWGS84\\s*\\[[\\s0.,+-]*\\]");

  private static final Envelope WORLD = new Envelope(-180, 180, -90, 90);

  private final MathTransform transform;
  private final String where;

  private Transform(MathTransform transform, String where) {
    this.transform = transform;
    this.where = where;
  }

  /**
   * Understands a system.
   *
   * @param wkt with a shift, unless it is on WGS 84: a missing one is never passed over
   */
  static Transform of(String wkt, String where) throws FormatException {
    Hints strict = new Hints(Hints.LENIENT_DATUM_SHIFT, false);
    if (!NO_SHIFT.matcher(wkt).find()) {
      strict.put(Hints.DATUM_SHIFT_METHOD, "Geocentric");
    }
    try {
      CoordinateReferenceSystem system = new ReferencingObjectFactory().createFromWKT(wkt);
      MathTransform transform =
          new DefaultCoordinateOperationFactory(strict)
              .createOperation(system, DefaultGeographicCRS.WGS84)
              .getMathTransform();
      return new Transform(transform, where);
    } catch (FactoryException | IllegalArgumentException e) {
      throw fault("its coordinate system is not understood: " + e.getMessage(), where);
    }
  }

  /** A geometry of the same kind in longitude and latitude. */
  Geometry of(Geometry geometry) throws FormatException {
    Geometry copy = geometry.copy();
    Each each = new Each();
    copy.apply(each);
    each.check();
    return copy;
  }

  Coordinate of(Coordinate coordinate) throws FormatException {
    double[] point = {coordinate.x, coordinate.y};
    try {
      transform.transform(point, 0, point, 0, 1);
    } catch (TransformException e) {
      throw outside(coordinate);
    }
    if (!WORLD.contains(point[0], point[1])) {
      throw outside(coordinate);
    }
    return new Coordinate(point[0], point[1]);
  }

  private FormatException outside(Coordinate coordinate) {
    return fault(
        "a coordinate that its coordinate system doesn't reach: "
            + coordinate.x
            + " "
            + coordinate.y,
        where);
  }

  private static FormatException fault(String what, String where) {
    return new FormatException(
        new Fault(
            what,
            where,
            "a geographic or projected system, and coordinates where it is used",
            "export it in WGS 84 longitude and latitude"));
  }

  /** Replaces x and y of each coordinate, up to the first that can't be. */
  private final class Each implements CoordinateSequenceFilter {
    private @Nullable FormatException failed;

    @Override
    public void filter(CoordinateSequence points, int i) {
      try {
        Coordinate place = of(new Coordinate(points.getX(i), points.getY(i)));
        points.setOrdinate(i, CoordinateSequence.X, place.x);
        points.setOrdinate(i, CoordinateSequence.Y, place.y);
      } catch (FormatException e) {
        failed = e;
      }
    }

    @Override
    public boolean isDone() {
      return failed != null;
    }

    @Override
    public boolean isGeometryChanged() {
      return true;
    }

    void check() throws FormatException {
      if (failed != null) {
        throw failed;
      }
    }
  }
}
