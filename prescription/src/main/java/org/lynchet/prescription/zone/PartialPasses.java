package org.lynchet.prescription.zone;

import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.function.ToIntFunction;
import java.util.stream.Collectors;
import org.lynchet.geometry.coverage.Cell;
import org.lynchet.geometry.coverage.Coverage;
import org.lynchet.geometry.coverage.Piece;
import org.lynchet.geometry.guidance.Guidance;
import org.lynchet.geometry.pass.Pass;
import org.lynchet.geometry.strip.Strip;

/**
 * Finds the pieces of passes that are narrower than their machine because the field ends: those
 * that do not reach both edges of the pass.
 */
final class PartialPasses {
  /** The pass with number n at n - 1. */
  private final List<Pass> passes;

  private final List<Piece> pieces;
  private final Set<Integer> numbers;

  /**
   * Finds them.
   *
   * @param strips the strips, left to right
   * @param passPieces the pieces of their passes, the group of each the number of its pass
   */
  PartialPasses(List<Strip> strips, List<Piece> passPieces) {
    passes = strips.stream().flatMap(strip -> strip.passes().stream()).toList();
    pieces = passPieces.stream().filter(this::isPartial).toList();
    numbers = pieces.stream().map(Piece::group).collect(Collectors.toSet());
  }

  private boolean isPartial(Piece piece) {
    Pass pass = passes.get(piece.group() - 1);
    return !pass.isFilledBy(piece.minOffsetMetres(), piece.maxOffsetMetres());
  }

  /** The pieces that are narrower than their pass. */
  List<Piece> pieces() {
    return pieces;
  }

  /** Numbers of the passes with such a piece. */
  Set<Integer> numbers() {
    return numbers;
  }

  /**
   * Indexes of the cells of a coverage that lie in such pieces. Only passes with one are looked at:
   * what is cut, joined and rounded in a pass reaches as far as the pass did.
   *
   * @param passOf the number of the pass of a cell, below 0 for none
   */
  Set<Integer> cellsIn(Coverage coverage, Guidance guidance, ToIntFunction<Cell> passOf) {
    Set<Integer> cells = new HashSet<>();
    ToIntFunction<Cell> partialPassOf =
        cell -> {
          int pass = passOf.applyAsInt(cell);
          return numbers.contains(pass) ? pass : -1;
        };
    for (Piece piece : coverage.pieces(partialPassOf, guidance)) {
      if (isPartial(piece)) {
        cells.addAll(piece.cells());
      }
    }
    return cells;
  }
}
