package org.lynchet.prescription.zone;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import org.lynchet.geometry.coverage.Centreline;
import org.lynchet.geometry.coverage.CrossSection;
import org.lynchet.geometry.coverage.Piece;
import org.lynchet.geometry.guidance.OffsetFrame;
import org.lynchet.geometry.pass.Pass;
import org.lynchet.geometry.strip.Strip;
import org.lynchet.prescription.plan.Plan;
import org.lynchet.prescription.plan.PlannedStrip;

/** Draws the centreline of each pass and measures its rows. */
final class PassLines {
  /** A row shorter than this, in metres, is not in the field. */
  private static final double NO_ROW = 1e-6;

  private final Plan plan;
  private final OffsetFrame frame;
  private final CrossSection inside;
  private final Map<Integer, List<Piece>> piecesOfPass;
  private final Set<Integer> partial;

  PassLines(
      Plan plan,
      OffsetFrame frame,
      CrossSection inside,
      List<Piece> passPieces,
      Set<Integer> partial) {
    this.plan = plan;
    this.frame = frame;
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
        Centreline.of(frame, pass.centreMetres(), pieces),
        strip.inPattern(),
        Math.max(0, Math.min(pass.rows(), strip.borderRowsLeft() - before)),
        Math.max(0, Math.min(pass.rows(), strip.borderRowsRight() - after)),
        lengths);
  }
}
