package org.lynchet.prescription.light;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/** Holds one period of rows as it stands on one day, for light from either side. */
final class CrossSection {
  private final List<CanopyRow> rows;
  private final double[] facing;
  private final double[] widths;
  private final double[] heights;
  private final double[] densities;
  private final Columns rightward;
  private final Columns leftward;

  CrossSection(List<CanopyRow> rows) {
    this.rows = rows;
    facing = new double[rows.size()];
    widths = new double[rows.size()];
    heights = new double[rows.size()];
    densities = new double[rows.size()];
    rightward = new Columns(rows, true);
    leftward = new Columns(rows, false);
    Map<CanopyTraits, Double> shares = new HashMap<>();
    for (int i = 0; i < facing.length; i++) {
      CanopyTraits canopy = rows.get(i).canopy();
      if (canopy != null) {
        facing[i] =
            shares.computeIfAbsent(
                canopy, c -> LeafExtinction.facingShare(c.extinction(), c.leafAreaIndex()));
      }
    }
  }

  /** Sets the canopies to those of a day since 1970-01-01. */
  void grow(double day) {
    for (int i = 0; i < facing.length; i++) {
      CanopyRow row = rows.get(i);
      grow(i, row.canopy(), row.spacingMetres(), day);
    }
    rightward.set(widths, heights, densities);
    leftward.set(widths, heights, densities);
  }

  private void grow(int i, @Nullable CanopyTraits canopy, double spacing, double day) {
    if (canopy == null) {
      return;
    }
    widths[i] = canopy.widthAt(day, spacing);
    heights[i] = canopy.heightAt(day);
    double leafAreaMetres = canopy.leafAreaIndexAt(day) * spacing;
    densities[i] = facing[i] * leafAreaMetres / (widths[i] * heights[i]);
  }

  /** Sends light that moves so far to the right, below 0 to the left, for each metre down. */
  void send(RayComb comb, double shift, double path, double energy, double start, Receipts to) {
    comb.send(shift < 0 ? leftward : rightward, Math.abs(shift), path, energy, start, to);
  }
}
