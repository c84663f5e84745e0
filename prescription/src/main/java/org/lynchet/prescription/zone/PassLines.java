package org.lynchet.prescription.zone;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.LineString;
import org.lynchet.geometry.coverage.Piece;
import org.lynchet.geometry.coverage.Section;
import org.lynchet.geometry.guidance.Guidance;
import org.lynchet.geometry.pass.Pass;
import org.lynchet.geometry.strip.Strip;
import org.lynchet.prescription.plan.Plan;
import org.lynchet.prescription.plan.PlannedStrip;

/** Draws the centreline of each pass and measures its rows. */
final class PassLines {
  private static final GeometryFactory FACTORY = new GeometryFactory();

  /** A row shorter than this, in metres, is not in the field. */
  private static final double NO_ROW = 1e-6;

  private final Plan plan;
  private final Guidance guidance;
  private final Section inside;
  private final Map<Integer, List<Piece>> piecesOfPass;
  private final Set<Integer> partial;

  PassLines(
      Plan plan, Guidance guidance, Section inside, List<Piece> passPieces, Set<Integer> partial) {
    this.plan = plan;
    this.guidance = guidance;
    this.inside = inside;
    this.piecesOfPass = passPieces.stream().collect(Collectors.groupingBy(Piece::group));
    this.partial = partial;
  }

  /** The passes of the strips, left to right; those without any area are left out. */
  List<DrivenPass> of(List<Strip> strips) {
    List<DrivenPass> passes = new ArrayList<>();
    for (Strip strip : strips) {
      for (Pass pass : strip.passes()) {
        List<Piece> pieces = piecesOfPass.getOrDefault(pass.number(), List.of());
        if (!pieces.isEmpty()) {
          passes.add(driven(strip, pass, pieces));
        }
      }
    }
    return passes;
  }

  private DrivenPass driven(Strip strip, Pass pass, List<Piece> pieces) {
    double[] rows = new double[pass.rows()];
    for (int row = 1; row <= rows.length; row++) {
      rows[row - 1] = pass.rowMetres(row);
    }
    int inField = 0;
    double length = 0;
    List<Double> lengths = new ArrayList<>();
    for (double row : inside.lengthsMetres(rows)) {
      double inRow = row > NO_ROW ? row : 0;
      inField += row > NO_ROW ? 1 : 0;
      length += inRow;
      lengths.add(inRow);
    }
    int before = (pass.number() - strip.passes().get(0).number()) * pass.rows();
    int after = (strip.passes().size() - 1) * pass.rows() - before;
    PlannedStrip planned = plan.strips().get(strip.inPattern());
    return new DrivenPass(
        pass,
        planned.plantedBy(),
        planned.crop(),
        strip.number(),
        partial.contains(pass.number()),
        inField,
        length,
        line(pass, pieces),
        strip.inPattern(),
        Math.max(0, Math.min(pass.rows(), strip.borderRowsLeft() - before)),
        Math.max(0, Math.min(pass.rows(), strip.borderRowsRight() - after)),
        lengths);
  }

  private Geometry line(Pass pass, List<Piece> pieces) {
    LineString[] lines =
        stretches(pieces).stream().map(s -> line(pass, s[0], s[1])).toArray(LineString[]::new);
    return lines.length == 1 ? lines[0] : FACTORY.createMultiLineString(lines);
  }

  /**
   * Where along the guidance line the pieces lie, from the start; pieces side by side are one
   * stretch.
   */
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

  private LineString line(Pass pass, double from, double to) {
    Coordinate[] points = guidance.line(pass.centreMetres(), from, to).toArray(new Coordinate[0]);
    for (Coordinate point : points) {
      point.x = Math.rint(point.x * 1e9) / 1e9;
      point.y = Math.rint(point.y * 1e9) / 1e9;
    }
    return FACTORY.createLineString(points);
  }
}
