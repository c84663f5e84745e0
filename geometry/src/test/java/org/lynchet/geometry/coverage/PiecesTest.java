package org.lynchet.geometry.coverage;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

/** Pieces: cells of one group that hang together by edges. */
class PiecesTest {

  /** A U on its side, cut at 5, 20 and 30: bands 2 and 3 have two cells each. */
  private static Coverage sidewaysU() {
    return TestField.of("POLYGON ((0 0, 40 0, 40 10, 10 10, 10 30, 40 30, 40 40, 0 40, 0 0))")
        .cut(5, 20, 30);
  }

  @Test
  @DisplayName("two arms of one strip are two pieces")
  void arms() {
    List<Piece> pieces = sidewaysU().pieces(cell -> cell.band() / 2);
    assertThat(pieces).extracting(Piece::group).containsExactlyInAnyOrder(0, 1, 1);
    Piece first = pieces.stream().filter(piece -> piece.group() == 0).findFirst().orElseThrow();
    assertThat(first.areaSquareMetres()).isCloseTo(400 + 200, within(1e-5));
    assertThat(first.cells()).hasSize(2).isSorted();
    for (Piece arm : pieces.stream().filter(piece -> piece.group() == 1).toList()) {
      assertThat(arm.cells()).hasSize(2).isSorted();
      assertThat(arm.areaSquareMetres()).isCloseTo(200, within(1e-5));
      assertThat(arm.minOffsetMetres()).isCloseTo(20, within(1e-7));
      assertThat(arm.maxOffsetMetres()).isCloseTo(40, within(1e-7));
      assertThat(arm.maxAlongMetres() - arm.minAlongMetres()).isCloseTo(10, within(1e-7));
    }
  }

  @Test
  @DisplayName("a common vertex does not hold cells together")
  void vertexIsNoEdge() {
    Coverage coverage =
        TestField.of(
                "MULTIPOLYGON (((0 0, 10 0, 10 10, 0 10, 0 0)),"
                    + " ((10 10, 20 10, 20 20, 10 20, 10 10)))")
            .cut(10);
    assertThat(coverage.pieces(cell -> 1)).hasSize(2);
  }

  @Test
  @DisplayName("groups below 0 are left out")
  void leftOut() {
    assertThat(sidewaysU().pieces(cell -> -1)).isEmpty();
    assertThat(sidewaysU().pieces(cell -> cell.band() == 0 ? 7 : -1))
        .singleElement()
        .satisfies(piece -> assertThat(piece.group()).isEqualTo(7));
  }

  @Test
  @DisplayName("all in one group: the field's parts")
  void whole() {
    assertThat(sidewaysU().pieces(cell -> 3)).hasSize(1);
  }
}
