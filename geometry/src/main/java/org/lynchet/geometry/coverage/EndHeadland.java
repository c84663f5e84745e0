package org.lynchet.geometry.coverage;

import java.util.ArrayList;
import java.util.List;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.LineString;
import org.locationtech.jts.geom.LinearRing;
import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.geom.util.LinearComponentExtracter;
import org.locationtech.jts.operation.overlayng.OverlayNG;
import org.locationtech.jts.operation.overlayng.OverlayNGRobust;

/**
 * Draws a headland that lies only where the rows end: the places of a field within a distance of
 * the {@link EndRuns runs} of its boundary, each an {@link EndBand}.
 */
final class EndHeadland {
  private final Geometry area;
  private final List<EndBand> bands = new ArrayList<>();

  /**
   * Finds where the headland lies.
   *
   * @param area valid polygons, outer rings counter-clockwise, holes clockwise
   */
  EndHeadland(Geometry area, Headland headland, HeadlandEnds ends) {
    this.area = area;
    BoundaryAhead boundary = new BoundaryAhead(area);
    for (Object ring : LinearComponentExtracter.getLines(area)) {
      for (EndRun run : EndRuns.of((LinearRing) ring, headland, ends)) {
        bands.add(new EndBand(run, headland.widthMetres(), boundary));
      }
    }
  }

  /** The headland of a width, at most that which it was made for. */
  Geometry within(double widthMetres) {
    List<Geometry> parts = new ArrayList<>();
    for (EndBand band : bands) {
      Geometry near = band.within(widthMetres);
      Geometry inField = OverlayNGRobust.overlay(near, area, OverlayNG.INTERSECTION);
      for (Polygon part : Rings.polygons(inField)) {
        if (band.reaches(part)) {
          parts.add(part);
        }
      }
    }
    return parts.isEmpty() ? Rings.FACTORY.createPolygon() : OverlayNGRobust.union(parts);
  }

  /** What is left of the area inside the headland. */
  Geometry inside(double widthMetres) {
    Geometry headland = within(widthMetres);
    return headland.isEmpty()
        ? area
        : OverlayNGRobust.overlay(area, headland, OverlayNG.DIFFERENCE);
  }

  /** The runs, each drawn on beyond its ends as far as its inner edge goes. */
  List<LineString> runs() {
    return bands.stream().map(EndBand::line).toList();
  }
}
