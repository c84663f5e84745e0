package org.lynchet.geometry.coverage;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.LineString;
import org.lynchet.geometry.guidance.OffsetFrame;

/** Draws the line that a pass drives: as long as any of its swath is in the field. */
public final class Centreline {
  private static final GeometryFactory FACTORY = new GeometryFactory();

  /** How far a line drawn straight in longitude and latitude may bow from the pass, in metres. */
  private static final double BOW = 0.0005;

  private Centreline() {}

  /**
   * The line in degrees, rounded to 9 decimals: longitude (x) and latitude (y), a line for each
   * stretch along the AB line.
   *
   * @param frame the frame of the AB line
   * @param offsetMetres the offset at which it runs
   * @param pieces the pieces of its swath, at least one; pieces side by side are one stretch
   */
  public static Geometry of(OffsetFrame frame, double offsetMetres, List<Piece> pieces) {
    LineString[] lines =
        stretches(pieces).stream()
            .map(stretch -> line(frame, offsetMetres, stretch[0], stretch[1]))
            .toArray(LineString[]::new);
    return lines.length == 1 ? lines[0] : FACTORY.createMultiLineString(lines);
  }

  /** Where along the AB line the pieces lie, from the start. */
  private static List<double[]> stretches(List<Piece> pieces) {
    List<double[]> stretches = new ArrayList<>();
    for (Piece piece :
        pieces.stream().sorted(Comparator.comparingDouble(Piece::minAlongMetres)).toList()) {
      double[] last = stretches.isEmpty() ? null : stretches.get(stretches.size() - 1);
      if (last != null && piece.minAlongMetres() <= last[1]) {
        last[1] = Math.max(last[1], piece.maxAlongMetres());
      } else {
        stretches.add(new double[] {piece.minAlongMetres(), piece.maxAlongMetres()});
      }
    }
    return stretches;
  }

  private static LineString line(OffsetFrame frame, double offset, double from, double to) {
    int parts = Math.max(1, (int) Math.ceil((to - from) / frame.longestWithinBowMetres(BOW)));
    Coordinate[] points = new Coordinate[parts + 1];
    for (int i = 0; i <= parts; i++) {
      points[i] = frame.toLonLat(offset, from + (to - from) * i / parts);
      points[i].x = Math.rint(points[i].x * Vertices.STEPS_PER_DEGREE) / Vertices.STEPS_PER_DEGREE;
      points[i].y = Math.rint(points[i].y * Vertices.STEPS_PER_DEGREE) / Vertices.STEPS_PER_DEGREE;
    }
    return FACTORY.createLineString(points);
  }
}
