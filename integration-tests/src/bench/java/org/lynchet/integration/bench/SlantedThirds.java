package org.lynchet.integration.bench;

import java.util.ArrayList;
import java.util.List;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.lynchet.geometry.coverage.ManagementZone;
import org.lynchet.geometry.guidance.OffsetFrame;

/** Makes three management zones: slanted bands across the strips that cover a field. */
final class SlantedThirds {
  private SlantedThirds() {}

  static List<ManagementZone> of(Geometry boundary, OffsetFrame frame) {
    Envelope extent = FrameMoves.toOffset(boundary, frame).getEnvelopeInternal();
    double height = extent.getHeight() + 2;
    double slant = height / 10;
    double bottom = extent.getMinY() - 1;
    double[] edges = {
      bottom - 2 * slant, bottom + height / 3, bottom + 2 * height / 3, bottom + height + slant
    };
    List<ManagementZone> zones = new ArrayList<>();
    for (int i = 0; i < 3; i++) {
      Coordinate first = new Coordinate(extent.getMinX() - 1, edges[i]);
      Coordinate[] ring = {
        first,
        new Coordinate(extent.getMaxX() + 1, edges[i] + slant),
        new Coordinate(extent.getMaxX() + 1, edges[i + 1] + slant),
        new Coordinate(extent.getMinX() - 1, edges[i + 1]),
        first
      };
      zones.add(
          new ManagementZone(
              "third-" + (i + 1),
              FrameMoves.toLonLat(new GeometryFactory().createPolygon(ring), frame)));
    }
    return zones;
  }
}
