package org.lynchet.formats.isoxml;

import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.LinearRing;
import org.locationtech.jts.geom.MultiPolygon;
import org.locationtech.jts.geom.Polygon;
import org.lynchet.formats.XmlOutput;
import org.lynchet.formats.isoxml.TaskSet.Version;

/**
 * Writes areas: in version 4.3 a polygon (PLN) for each part; in version 3.3 one polygon with an
 * exterior ring for each part. Rings repeat their first point in both.
 */
final class AreaEncoder {
  private static final int EXTERIOR = 1;
  private static final int INTERIOR = 2;

  /** A point that means nothing by itself. */
  private static final int OTHER = 2;

  private final XmlOutput out;
  private final Version version;

  AreaEncoder(XmlOutput out, Version version) {
    this.out = out;
    this.version = version;
  }

  /** Writes an area as polygons of a type: 1 boundary, 2 treatment zone. */
  void write(MultiPolygon area, int type) {
    if (area.isEmpty()) {
      return;
    }
    if (version == Version.V3_3) {
      out.start("PLN").attribute("A", type);
    }
    for (int i = 0; i < area.getNumGeometries(); i++) {
      if (version == Version.V4_3) {
        out.start("PLN").attribute("A", type);
      }
      rings((Polygon) area.getGeometryN(i));
      if (version == Version.V4_3) {
        out.end();
      }
    }
    if (version == Version.V3_3) {
      out.end();
    }
  }

  private void rings(Polygon polygon) {
    ring(polygon.getExteriorRing(), EXTERIOR);
    for (int i = 0; i < polygon.getNumInteriorRing(); i++) {
      ring(polygon.getInteriorRingN(i), INTERIOR);
    }
  }

  private void ring(LinearRing ring, int type) {
    out.start("LSG").attribute("A", type);
    for (Coordinate at : ring.getCoordinates()) {
      point(at, OTHER);
    }
    out.end();
  }

  /** Writes a point of a type; latitude stands before longitude. */
  void point(Coordinate at, int type) {
    out.start("PNT").attribute("A", type);
    out.attribute("C", IsoText.degrees(at.y)).attribute("D", IsoText.degrees(at.x)).end();
  }
}
