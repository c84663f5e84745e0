package org.lynchet.prescription.light;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** Follows the same light through wide blocks of each canopy and row spacing, for comparison. */
final class WideBlocks {
  private record Kind(CanopyTraits canopy, double spacingMetres) {}

  private final List<CrossSection> blocks = new ArrayList<>();
  private final List<Receipts> receipts = new ArrayList<>();
  private final int[] ofRow;

  WideBlocks(List<CanopyRow> rows) {
    Map<Kind, Integer> kinds = new LinkedHashMap<>();
    ofRow = new int[rows.size()];
    for (int i = 0; i < ofRow.length; i++) {
      CanopyRow row = rows.get(i);
      CanopyTraits canopy = row.canopy();
      if (canopy != null) {
        Kind kind = new Kind(canopy, row.spacingMetres());
        ofRow[i] = kinds.computeIfAbsent(kind, any -> kinds.size());
        if (ofRow[i] == blocks.size()) {
          blocks.add(new CrossSection(List.of(row)));
          receipts.add(new Receipts(1));
        }
      }
    }
  }

  void grow(double day) {
    blocks.forEach(block -> block.grow(day));
  }

  void clear() {
    receipts.forEach(Receipts::clear);
  }

  void send(RayComb comb, double shift, double path, double energy, double start) {
    for (int i = 0; i < blocks.size(); i++) {
      blocks.get(i).send(comb, shift, path, energy, start, receipts.get(i));
    }
  }

  /** What a row would have absorbed in its wide block since the last {@link #clear}. */
  double absorbed(int row) {
    return receipts.get(ofRow[row]).absorbed[0];
  }
}
