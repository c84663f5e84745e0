package org.lynchet.prescription.light;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;

/** Draws the separate blocks that have the areas of a field's strips. */
final class BlocksAcross {
  private final List<FieldStrip> strips;
  private final List<String> crops;
  private final List<CanopyRow> beside;
  private final double lengthMetres;

  /**
   * Blocks.
   *
   * @param strips the strips, left to right
   * @param crops in the order of the blocks; those without a strip are left out
   * @param beside what stands on the left of the outer block, and mirrored on the right
   */
  BlocksAcross(List<FieldStrip> strips, List<String> crops, List<CanopyRow> beside) {
    this.strips = strips;
    this.crops = crops;
    this.beside = beside;
    this.lengthMetres =
        strips.stream().mapToDouble(FieldStrip::squareMetres).sum()
            / strips.stream().mapToDouble(FieldStrip::widthMetres).sum();
  }

  FieldRows asked(LightRequest like) {
    RowsAcross across = new RowsAcross();
    across.addBeside(beside);
    List<List<FieldStrip>> blocks = new ArrayList<>();
    for (String crop : crops) {
      List<FieldStrip> ofCrop = strips.stream().filter(one -> one.crop().equals(crop)).toList();
      if (!ofCrop.isEmpty()) {
        blocks.add(ofCrop);
      }
    }
    for (int i = 0; i < blocks.size(); i++) {
      add(blocks.get(i), i == 0, i == blocks.size() - 1, across);
    }
    across.addBeside(beside);
    return across.asked(like);
  }

  /**
   * Adds a block: its rows are as long as the field is on average, beside the field's sides as long
   * as the strips' outermost rows there; a row in its middle stands for what is left of its area.
   */
  private void add(List<FieldStrip> ofCrop, boolean first, boolean last, RowsAcross across) {
    double area = ofCrop.stream().mapToDouble(FieldStrip::squareMetres).sum();
    CanopyRow row = ofCrop.get(0).centre();
    double spacing = row.spacingMetres();
    int rows = Math.max(1, (int) Math.round(area / lengthMetres / spacing));
    int middle = rows / 2;
    double rest = area;
    List<Double> areas = new ArrayList<>();
    for (int i = 0; i < rows; i++) {
      double length = lengthMetres;
      if (i < middle && first) {
        length = strips.get(0).rows().get(0).lengthMetres();
      } else if (i > middle && last) {
        List<FieldStrip.Row> outer = strips.get(strips.size() - 1).rows();
        length = outer.get(outer.size() - 1).lengthMetres();
      }
      areas.add(i == middle ? 0 : Math.min(rest, length * spacing));
      rest -= areas.get(i);
    }
    areas.set(middle, rest);
    across.addStrip(Collections.nCopies(rows, row), areas);
  }
}
