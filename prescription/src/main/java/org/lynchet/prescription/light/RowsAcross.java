package org.lynchet.prescription.light;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** Puts rows side by side from the left to the right of a field, with their areas. */
final class RowsAcross {
  /** Rows that are further in than this from either side of a strip stand as in a wide block. */
  private static final double EDGE_METRES = 10;

  private final List<CanopyRow> rows = new ArrayList<>();
  private final List<Double> squareMetres = new ArrayList<>();
  private final Map<String, Double> furtherIn = new HashMap<>();
  private double edgeMetres;

  /** Adds rows that stand for none of the field and only cast shade. */
  void addBeside(List<CanopyRow> beside) {
    beside.forEach(row -> add(row, 0));
  }

  /**
   * Adds a strip. Of a wide one the middle is not drawn but for one row.
   *
   * @param strip its rows, left to right, of one row spacing
   * @param areas by row: what of the field it stands for, in square metres
   */
  void addStrip(List<CanopyRow> strip, List<Double> areas) {
    int edge = (int) Math.ceil(EDGE_METRES / strip.get(0).spacingMetres());
    for (int i = 0; i < strip.size(); i++) {
      if (i <= edge || i >= strip.size() - edge) {
        add(strip.get(i), areas.get(i));
      } else {
        furtherIn.merge(strip.get(i).crop(), areas.get(i), Double::sum);
      }
    }
  }

  private void add(CanopyRow row, double area) {
    double offset = edgeMetres + row.spacingMetres() / 2;
    rows.add(
        new CanopyRow(
            row.strip(),
            row.crop(),
            row.product(),
            row.row(),
            offset,
            row.spacingMetres(),
            row.canopy()));
    squareMetres.add(area);
    edgeMetres += row.spacingMetres();
  }

  /** All of it, asked for as another request is. */
  FieldRows asked(LightRequest like) {
    return new FieldRows(like.withRows(rows).withOpenEdges(), squareMetres, furtherIn);
  }
}
