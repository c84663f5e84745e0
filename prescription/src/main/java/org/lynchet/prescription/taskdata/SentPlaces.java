package org.lynchet.prescription.taskdata;

import java.util.ArrayList;
import java.util.List;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.CoordinateSequence;
import org.locationtech.jts.geom.CoordinateSequenceFilter;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.MultiPolygon;
import org.locationtech.jts.geom.Polygon;
import org.lynchet.geometry.frame.RoundedDegrees;

/** Rounds places to what task data carries: nine decimals of a degree, 0.1 mm. */
public final class SentPlaces {
  private SentPlaces() {}

  /** The polygons of some areas as one multipolygon, rounded. */
  public static MultiPolygon area(List<Geometry> areas) {
    List<Polygon> parts = new ArrayList<>();
    for (Geometry area : areas) {
      for (int i = 0; i < area.getNumGeometries(); i++) {
        Polygon part = (Polygon) area.getGeometryN(i).copy();
        part.apply(new Rounding());
        parts.add(part);
      }
    }
    return areas.get(0).getFactory().createMultiPolygon(parts.toArray(new Polygon[0]));
  }

  /** A place, rounded. */
  static Coordinate place(Coordinate at) {
    return RoundedDegrees.of(at);
  }

  /** Rounds every vertex where it stands. */
  private static final class Rounding implements CoordinateSequenceFilter {
    @Override
    public void filter(CoordinateSequence points, int i) {
      points.setOrdinate(i, 0, RoundedDegrees.of(points.getX(i)));
      points.setOrdinate(i, 1, RoundedDegrees.of(points.getY(i)));
    }

    @Override
    public boolean isDone() {
      return false;
    }

    @Override
    public boolean isGeometryChanged() {
      return true;
    }
  }
}
