package org.lynchet.geometry.coverage;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.LineString;
import org.lynchet.geometry.frame.RoundedDegrees;
import org.lynchet.geometry.guidance.Guidance;

/** Draws the line that a pass drives: as long as any of its swath is in the field. */
public final class Centreline {
  private Centreline() {}

  /**
   * The line in degrees, rounded to 9 decimals: longitude (x) and latitude (y), a line for each
   * stretch along the guidance line.
   *
   * @param guidance the line that the pass is steered by
   * @param offsetMetres the offset at which it runs
   * @param pieces the pieces of its swath, at least one; pieces side by side are one stretch
   */
  public static Geometry of(Guidance guidance, double offsetMetres, List<Piece> pieces) {
    LineString[] lines =
        stretches(pieces).stream()
            .map(stretch -> line(guidance, offsetMetres, stretch[0], stretch[1]))
            .toArray(LineString[]::new);
    return lines.length == 1 ? lines[0] : Rings.FACTORY.createMultiLineString(lines);
  }

  /** Where along the guidance line the pieces lie, from the start. */
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

  private static LineString line(Guidance guidance, double offset, double from, double to) {
    return Rings.FACTORY.createLineString(
        guidance.line(offset, from, to).stream()
            .map(RoundedDegrees::of)
            .toArray(Coordinate[]::new));
  }
}
