package org.lynchet.prescription.light;

import java.util.List;

/**
 * Holds the cross-section of one day as light sees it that travels to one side.
 *
 * <p>Places are metres from the left edge of the period, for light to the right, or from its right
 * edge, for light to the left; so light always travels to larger places.
 */
final class Columns {
  final int count;
  final double periodMetres;

  /** The row that each column belongs to. */
  final int[] row;

  final double[] cellEnd;
  final double[] canopyBegin;
  final double[] canopyEnd;
  final double[] height;

  /** Leaf area that faces a ray, per metre of its path. */
  final double[] density;

  private final double[] spacing;
  private double top;

  Columns(List<CanopyRow> rows, boolean toTheRight) {
    count = rows.size();
    row = new int[count];
    cellEnd = new double[count];
    canopyBegin = new double[count];
    canopyEnd = new double[count];
    height = new double[count];
    density = new double[count];
    spacing = new double[count];
    double end = 0;
    for (int i = 0; i < count; i++) {
      row[i] = toTheRight ? i : count - 1 - i;
      spacing[i] = rows.get(row[i]).spacingMetres();
      end += spacing[i];
      cellEnd[i] = end;
    }
    periodMetres = end;
  }

  /** Sets the canopies, given by row: width, height and leaf area density. */
  void set(double[] widths, double[] heights, double[] densities) {
    top = 0;
    for (int i = 0; i < count; i++) {
      double middle = cellEnd[i] - spacing[i] / 2;
      double half = widths[row[i]] / 2;
      canopyBegin[i] = middle - half;
      canopyEnd[i] = middle + half;
      height[i] = heights[row[i]];
      density[i] = densities[row[i]];
      top = Math.max(top, height[i]);
    }
  }

  double spacing(int column) {
    return spacing[column];
  }

  /** The height of the tallest canopy. */
  double topMetres() {
    return top;
  }
}
