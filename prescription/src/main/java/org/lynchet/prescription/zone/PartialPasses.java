package org.lynchet.prescription.zone;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.lynchet.geometry.coverage.Cell;
import org.lynchet.geometry.coverage.Coverage;
import org.lynchet.geometry.coverage.Piece;
import org.lynchet.geometry.coverage.Regions;
import org.lynchet.geometry.coverage.Section;
import org.lynchet.geometry.guidance.Guidance;
import org.lynchet.geometry.pass.Pass;
import org.lynchet.geometry.strip.Bands;
import org.lynchet.geometry.strip.StripLayout;

/**
 * Finds the pieces of passes that are narrower than their machine because the field ends: those
 * that do not reach both edges of the pass.
 *
 * <p>The field ends inside few passes: at its sides, and where its boundary turns back. Only those
 * are cut out and looked at.
 */
final class PartialPasses {
  /** Twice what a piece may lack and yet reach the edge of its pass. */
  private static final double NEAR_EDGE = 2 * Pass.REACHES_METRES;

  /** The pass with number n at n - 1. */
  private final List<Pass> passes;

  private final List<Piece> pieces;
  private final BitSet partialPasses = new BitSet();

  /**
   * Finds them.
   *
   * @param regions the field divided by its headland, and by whatever else
   * @param inside what of it is cut into strips
   * @param strips the strips
   */
  PartialPasses(Regions regions, Section inside, Guidance guidance, StripLayout strips) {
    passes = new ArrayList<>();
    strips.strips().forEach(strip -> passes.addAll(strip.passes()));
    boolean[] mayEnd = inside.mayEnd(strips.passBands().cutsMetres(), NEAR_EDGE);
    Bands bands = strips.passBands(pass -> mayEnd[pass - 1]);
    pieces =
        Coverage.pieces(regions, guidance, bands.cutsMetres(), cell -> CellPlace.pass(bands, cell))
            .stream()
            .filter(this::isPartial)
            .toList();
    pieces.forEach(piece -> partialPasses.set(piece.group()));
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
    Set<Integer> numbers = new HashSet<>();
    pieces.forEach(piece -> numbers.add(piece.group()));
    return numbers;
  }

  /**
   * Indexes of the cells of a coverage that lie in such pieces. Only passes with one are looked at:
   * what is cut, joined and rounded in a pass reaches as far as the pass did.
   */
  BitSet cellsIn(Coverage coverage, Guidance guidance, Bands bands) {
    BitSet cells = new BitSet();
    for (Piece piece : coverage.pieces(cell -> partialPassOf(bands, cell), guidance)) {
      if (isPartial(piece)) {
        piece.cells().forEach(cells::set);
      }
    }
    return cells;
  }

  private int partialPassOf(Bands bands, Cell cell) {
    int pass = CellPlace.pass(bands, cell);
    return pass > 0 && partialPasses.get(pass) ? pass : -1;
  }
}
