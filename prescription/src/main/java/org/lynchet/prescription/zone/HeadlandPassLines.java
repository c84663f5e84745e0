package org.lynchet.prescription.zone;

import java.util.ArrayList;
import java.util.List;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.CoordinateList;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.LineString;
import org.lynchet.geometry.coverage.DrawnHeadland;
import org.lynchet.geometry.coverage.HeadlandLines;
import org.lynchet.geometry.frame.RoundedDegrees;
import org.lynchet.geometry.guidance.OffsetFrame;
import org.lynchet.prescription.plan.PlannedHeadland;

/**
 * Draws the centreline of each headland pass: half a width from the boundary, then whole widths.
 */
final class HeadlandPassLines {
  private static final GeometryFactory FACTORY = new GeometryFactory();

  /** How far a line drawn straight in longitude and latitude may bow from the pass, in metres. */
  private static final double BOW = 0.0005;

  private final OffsetFrame frame;

  HeadlandPassLines(OffsetFrame frame) {
    this.frame = frame;
  }

  /** The passes, from the innermost to the outermost; those for which there is no room left out. */
  List<HeadlandPass> of(PlannedHeadland planned, DrawnHeadland headland) {
    HeadlandLines lines = HeadlandLines.of(headland);
    double width = headland.widthMetres() / planned.passes();
    List<HeadlandPass> passes = new ArrayList<>();
    for (int number = 1; number <= planned.passes(); number++) {
      double distance = (planned.passes() - number + 0.5) * width;
      LineString[] drawn = lines.at(distance).stream().map(this::lonLat).toArray(LineString[]::new);
      if (drawn.length > 0) {
        passes.add(
            new HeadlandPass(
                planned.plantedBy(),
                planned.crop(),
                number,
                distance,
                drawn.length == 1 ? drawn[0] : FACTORY.createMultiLineString(drawn)));
      }
    }
    return passes;
  }

  private LineString lonLat(LineString line) {
    Coordinate[] places = line.getCoordinates();
    CoordinateList result = new CoordinateList();
    result.add(lonLat(places[0]), false);
    for (int i = 1; i < places.length; i++) {
      addBetween(places[i - 1], places[i], result);
      result.add(lonLat(places[i]), false);
    }
    Coordinate first = lonLat(places[0]);
    if (result.size() < 2) {
      result.add(first, true);
    }
    return FACTORY.createLineString(result.toCoordinateArray());
  }

  /** Adds places until the line between any two, drawn straight, bows little enough. */
  private void addBetween(Coordinate from, Coordinate to, CoordinateList result) {
    Coordinate a = frame.toLonLat(from.x, from.y);
    Coordinate b = frame.toLonLat(to.x, to.y);
    Coordinate drawn = frame.toOffset((a.x + b.x) / 2, (a.y + b.y) / 2);
    Coordinate middle = new Coordinate((from.x + to.x) / 2, (from.y + to.y) / 2);
    if (drawn.distance(middle) > BOW) {
      addBetween(from, middle, result);
      result.add(lonLat(middle), false);
      addBetween(middle, to, result);
    }
  }

  private Coordinate lonLat(Coordinate at) {
    return RoundedDegrees.of(frame.toLonLat(at.x, at.y));
  }
}
