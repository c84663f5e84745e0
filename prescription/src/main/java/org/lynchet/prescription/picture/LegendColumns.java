package org.lynchet.prescription.picture;

import java.util.ArrayList;
import java.util.List;

/**
 * Divides rows of a legend among columns.
 *
 * @param rows the rows, from the top
 */
record LegendColumns(List<LegendRow> rows) {

  LegendColumns {
    rows = List.copyOf(rows);
  }

  /** The height that it takes in that many columns. */
  double height(int columns) {
    double height = rows.stream().mapToDouble(LegendRow::height).sum() / columns;
    while (columns(height).size() > columns) {
      height++;
    }
    return height;
  }

  /** Marks of the legend in that many columns of {@link LegendRow#WIDTH}. */
  List<Mark> marks(double left, double top, int columns, double gap) {
    List<Mark> marks = new ArrayList<>();
    double x = left;
    for (List<LegendRow> column : columns(height(columns))) {
      double y = top;
      for (LegendRow row : column) {
        row.paint(x, y, marks);
        y += row.height();
      }
      x += LegendRow.WIDTH + gap;
    }
    return marks;
  }

  private List<List<LegendRow>> columns(double height) {
    List<List<LegendRow>> columns = new ArrayList<>();
    double used = Double.POSITIVE_INFINITY;
    for (LegendRow row : rows) {
      if (used + row.height() > height + 1e-6) {
        columns.add(new ArrayList<>());
        used = 0;
      }
      columns.get(columns.size() - 1).add(row);
      used += row.height();
    }
    return columns;
  }
}
