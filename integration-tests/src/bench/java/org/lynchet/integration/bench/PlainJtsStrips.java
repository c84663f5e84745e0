package org.lynchet.integration.bench;

import java.util.ArrayList;
import java.util.List;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.Polygonal;
import org.locationtech.jts.geom.prep.PreparedGeometry;
import org.locationtech.jts.geom.prep.PreparedGeometryFactory;
import org.locationtech.jts.operation.overlayng.OverlayNG;
import org.locationtech.jts.operation.overlayng.OverlayNGRobust;

/**
 * Makes the zones of a field by intersecting it with one box after the other: the strip first, then
 * its zones out of the strip.
 *
 * <p>Intersections go through OverlayNG, the faster of the library's two overlays, which clips its
 * input to the box before it nodes.
 */
public final class PlainJtsStrips {
  private static final GeometryFactory FACTORY = new GeometryFactory();

  /** Pieces below are left out, in square metres. */
  private static final double SMALLEST = 1e-6;

  private static final int QUADRANT_SEGMENTS = 32;

  private final double stripMetres;
  private final double borderMetres;

  /** Strips of a width, with border zones of a width on either side. */
  public PlainJtsStrips(double stripMetres, double borderMetres) {
    this.stripMetres = stripMetres;
    this.borderMetres = borderMetres;
  }

  /** The zones of a field in the plane, strips along y. */
  public List<PlainZone> zones(Geometry field) {
    List<PlainZone> zones = new ArrayList<>();
    Envelope extent = field.getEnvelopeInternal();
    long first = (long) Math.floor(extent.getMinX() / stripMetres);
    for (long strip = first; strip * stripMetres < extent.getMaxX(); strip++) {
      double left = strip * stripMetres;
      double right = left + stripMetres;
      Geometry whole = between(field, left, right);
      add(zones, between(whole, left, left + borderMetres), strip, PlainZone.Kind.BORDER);
      add(
          zones,
          between(whole, left + borderMetres, right - borderMetres),
          strip,
          PlainZone.Kind.CENTRE);
      add(zones, between(whole, right - borderMetres, right), strip, PlainZone.Kind.BORDER);
    }
    return zones;
  }

  /** The zones of a field with a headland, crossed with management zones. */
  public List<PlainZone> zones(
      Geometry field, double headlandMetres, List<Geometry> managementZones) {
    Geometry inside = field.buffer(-headlandMetres, QUADRANT_SEGMENTS);
    List<PlainZone> whole = inside.isEmpty() ? new ArrayList<>() : zones(inside);
    whole.add(
        new PlainZone(
            OverlayNGRobust.overlay(field, inside, OverlayNG.DIFFERENCE),
            0,
            PlainZone.Kind.HEADLAND));
    List<PreparedGeometry> prepared =
        managementZones.stream().map(PreparedGeometryFactory::prepare).toList();
    List<PlainZone> crossed = new ArrayList<>();
    for (PlainZone zone : whole) {
      for (PreparedGeometry managementZone : prepared) {
        cross(zone, managementZone, crossed);
      }
    }
    return crossed;
  }

  private static void cross(PlainZone zone, PreparedGeometry other, List<PlainZone> crossed) {
    Envelope extent = zone.area().getEnvelopeInternal();
    if (!extent.intersects(other.getGeometry().getEnvelopeInternal())) {
      return;
    }
    if (other.covers(zone.area())) {
      crossed.add(zone);
    } else if (other.intersects(zone.area())) {
      Geometry area =
          OverlayNGRobust.overlay(zone.area(), other.getGeometry(), OverlayNG.INTERSECTION);
      if (isArea(area)) {
        crossed.add(new PlainZone(area, zone.strip(), zone.kind()));
      }
    }
  }

  private static void add(
      List<PlainZone> zones, Geometry area, long strip, PlainZone.Kind kind) {
    if (isArea(area)) {
      zones.add(new PlainZone(area, strip, kind));
    }
  }

  /** What lies between two lines along y; nothing is computed where the extents tell. */
  private static Geometry between(Geometry area, double left, double right) {
    Envelope extent = area.getEnvelopeInternal();
    if (right <= extent.getMinX() || left >= extent.getMaxX()) {
      return FACTORY.createPolygon();
    }
    if (left <= extent.getMinX() && right >= extent.getMaxX()) {
      return area;
    }
    Envelope tall = new Envelope(left, right, extent.getMinY() - 1, extent.getMaxY() + 1);
    return OverlayNGRobust.overlay(area, FACTORY.toGeometry(tall), OverlayNG.INTERSECTION);
  }

  private static boolean isArea(Geometry geometry) {
    return geometry instanceof Polygonal && geometry.getArea() >= SMALLEST;
  }
}
