package org.lynchet.prescription.zone;

import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.lynchet.geometry.coverage.Piece;
import org.lynchet.geometry.pass.Pass;
import org.lynchet.geometry.strip.Strip;

/**
 * Finds the pieces of passes that are narrower than their machine because the field ends: those
 * that do not reach both edges of the pass.
 */
final class PartialPasses {
  private final Map<Integer, Pass> passes;

  PartialPasses(List<Strip> strips) {
    passes =
        strips.stream()
            .flatMap(strip -> strip.passes().stream())
            .collect(Collectors.toMap(Pass::number, Function.identity()));
  }

  /** Whether a piece, its group the number of a pass, is narrower than the pass. */
  boolean isPartial(Piece piece) {
    Pass pass = passes.get(piece.group());
    return pass != null && !pass.isFilledBy(piece.minOffsetMetres(), piece.maxOffsetMetres());
  }

  /** Numbers of the passes with a partial piece. */
  Set<Integer> among(List<Piece> pieces) {
    return pieces.stream().filter(this::isPartial).map(Piece::group).collect(Collectors.toSet());
  }

  /** Indexes of the cells in partial pieces. */
  Set<Integer> cellsAmong(List<Piece> pieces) {
    Set<Integer> cells = new HashSet<>();
    pieces.stream().filter(this::isPartial).forEach(piece -> cells.addAll(piece.cells()));
    return cells;
  }
}
