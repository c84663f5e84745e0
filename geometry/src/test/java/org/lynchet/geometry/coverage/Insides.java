package org.lynchet.geometry.coverage;

import java.util.ArrayList;
import java.util.List;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.operation.overlayng.OverlayNG;
import org.locationtech.jts.operation.overlayng.OverlayNGRobust;

/** Draws what is cut into strips, and clips it with JTS: the second opinion of the tests. */
final class Insides {
  private static final GeometryFactory FACTORY = new GeometryFactory();

  private Insides() {}

  /** All regions but the headland, in metres of the offset frame. */
  static Geometry of(Regions regions) {
    List<Geometry> inside = new ArrayList<>();
    for (Region region : regions.list()) {
      if (!region.label.headland()) {
        inside.add(Rings.polygon(regions.vertices(), region.rings, Rings.Place.OFFSET));
      }
    }
    return FACTORY.createMultiPolygon(inside.toArray(new Polygon[0]));
  }

  /** The area in one band; parts of the inside are clipped one by one and added up. */
  static double between(Geometry inside, Envelope reach, double[] cuts, int band) {
    double area = 0;
    for (int i = 0; i < inside.getNumGeometries(); i++) {
      area += clip(inside.getGeometryN(i), reach, cuts, band).getArea();
    }
    return area;
  }

  static Geometry clip(Geometry inside, Envelope reach, double[] cuts, int band) {
    double left = band == 0 ? reach.getMinX() - 1 : cuts[band - 1];
    double right = band == cuts.length ? reach.getMaxX() + 1 : cuts[band];
    if (inside.isEmpty() || left >= right) {
      return FACTORY.createPolygon();
    }
    Envelope box = new Envelope(left, right, reach.getMinY() - 1, reach.getMaxY() + 1);
    return OverlayNGRobust.overlay(inside, FACTORY.toGeometry(box), OverlayNG.INTERSECTION);
  }
}
