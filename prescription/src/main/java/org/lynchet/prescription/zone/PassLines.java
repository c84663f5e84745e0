package org.lynchet.prescription.zone;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.lynchet.geometry.coverage.Centreline;
import org.lynchet.geometry.coverage.Piece;
import org.lynchet.geometry.coverage.Section;
import org.lynchet.geometry.guidance.Guidance;
import org.lynchet.geometry.pass.Pass;
import org.lynchet.geometry.strip.Strip;
import org.lynchet.prescription.plan.Plan;
import org.lynchet.prescription.plan.PlannedStrip;

/** Draws the centreline of each pass and measures its rows. */
final class PassLines {
  /** A row shorter than this, in metres, is not in the field. */
  private static final double NO_ROW = 1e-6;

  private final Plan plan;
  private final Guidance guidance;
  private final Section planted;
  private final Map<Integer, List<Piece>> piecesOfPass;
  private final Set<Integer> partial;

  /**
   * Gets ready to draw.
   *
   * @param planted what is planted in strips, to measure rows
   */
  PassLines(
      Plan plan, Guidance guidance, Section planted, List<Piece> passPieces, Set<Integer> partial) {
    this.plan = plan;
    this.guidance = guidance;
    this.planted = planted;
    this.piecesOfPass = passPieces.stream().collect(Collectors.groupingBy(Piece::group));
    this.partial = partial;
  }

  /** The passes of the strips, left to right; those without any area are left out. */
  List<DrivenPass> of(List<Strip> strips) {
    double[] rowLengths = rowLengths(strips);
    List<DrivenPass> passes = new ArrayList<>();
    int row = 0;
    for (Strip strip : strips) {
      for (Pass pass : strip.passes()) {
        double[] rows = Arrays.copyOfRange(rowLengths, row, row + pass.rows());
        List<Piece> pieces = piecesOfPass.getOrDefault(pass.number(), List.of());
        if (!pieces.isEmpty()) {
          passes.add(driven(strip, pass, rows, pieces));
        }
        row += pass.rows();
      }
    }
    return passes;
  }

  /** The lengths of the rows of all passes, left to right, measured in one go. */
  private double[] rowLengths(List<Strip> strips) {
    return planted.lengthsMetres(
        strips.stream()
            .flatMap(strip -> strip.passes().stream())
            .flatMapToDouble(
                pass -> IntStream.rangeClosed(1, pass.rows()).mapToDouble(pass::rowMetres))
            .toArray());
  }

  private DrivenPass driven(Strip strip, Pass pass, double[] rows, List<Piece> pieces) {
    int inField = 0;
    double length = 0;
    List<Double> lengths = new ArrayList<>();
    for (double row : rows) {
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
        Centreline.of(guidance, pass.centreMetres(), pieces),
        strip.inPattern(),
        Math.max(0, Math.min(pass.rows(), strip.borderRowsLeft() - before)),
        Math.max(0, Math.min(pass.rows(), strip.borderRowsRight() - after)),
        lengths);
  }
}
