package org.lynchet.prescription.picture;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.lynchet.prescription.light.CanopyRow;

/** Places rows across a box, left to right, and names their strips below it. */
final class AcrossScale {
  private static final double NAME = 9;

  private final List<CanopyRow> rows;
  private final Box box;
  private final double leftMetres;
  private final double pointsPerMetre;

  AcrossScale(List<CanopyRow> rows, Box box) {
    this.rows = rows;
    this.box = box;
    this.leftMetres = edge(rows.get(0), -1);
    this.pointsPerMetre = box.width() / (edge(rows.get(rows.size() - 1), 1) - leftMetres);
  }

  private static double edge(CanopyRow row, int side) {
    return row.offsetMetres() + side * row.spacingMetres() / 2;
  }

  double pointsPerMetre() {
    return pointsPerMetre;
  }

  double left(CanopyRow row) {
    return box.left() + (edge(row, -1) - leftMetres) * pointsPerMetre;
  }

  double right(CanopyRow row) {
    return box.left() + (edge(row, 1) - leftMetres) * pointsPerMetre;
  }

  double centre(CanopyRow row) {
    return (left(row) + right(row)) / 2;
  }

  /** Crops in the order of their strips, each with its place in the palette. */
  Map<String, Integer> crops() {
    Map<String, Integer> crops = new LinkedHashMap<>();
    rows.forEach(row -> crops.putIfAbsent(row.crop(), crops.size()));
    return crops;
  }

  /** The names of strips, centred below the box, with lines between the strips. */
  List<Mark> strips() {
    List<Mark> marks = new ArrayList<>();
    int first = 0;
    for (int i = 1; i <= rows.size(); i++) {
      if (i == rows.size() || rows.get(i).strip() != rows.get(first).strip()) {
        double from = left(rows.get(first));
        double to = right(rows.get(i - 1));
        String name = TextWidth.cut(rows.get(first).crop(), to - from, NAME, false);
        marks.add(
            new Mark.Text(
                name, (from + to) / 2, box.bottom() + 13, NAME, false, Mark.Anchor.MIDDLE, false));
        if (i < rows.size()) {
          marks.add(
              new Mark.Line(Outline.line(to, box.top(), to, box.bottom() + 4), Scene.INK, 0.8, 3));
        }
        first = i;
      }
    }
    return marks;
  }
}
