package org.lynchet.prescription.light;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import org.lynchet.geometry.pass.Pass;
import org.lynchet.prescription.plan.Plan;
import org.lynchet.prescription.plan.PlannedStrip;
import org.lynchet.prescription.zone.DrivenPass;
import org.lynchet.prescription.zone.FieldLayout;

/**
 * One strip of a field, row by row.
 *
 * @param inPattern which strip of the pattern it is, from 0
 * @param centre a centre row of it
 * @param rows its rows, left to right, at least one
 */
record FieldStrip(int inPattern, CanopyRow centre, List<Row> rows) {

  /** Copies the list. */
  FieldStrip {
    rows = List.copyOf(rows);
  }

  /**
   * One row.
   *
   * @param row how it grows; names of products make no difference to light and are left out
   * @param lengthMetres its length in the field, 0 for none
   */
  record Row(CanopyRow row, double lengthMetres) {
    /** What of the field it stands for. */
    double squareMetres() {
      return lengthMetres * row.spacingMetres();
    }
  }

  /** The crop. */
  String crop() {
    return centre.crop();
  }

  /** How wide it is. */
  double widthMetres() {
    return rows.stream().mapToDouble(row -> row.row().spacingMetres()).sum();
  }

  /** What of the field its rows stand for. */
  double squareMetres() {
    return rows.stream().mapToDouble(Row::squareMetres).sum();
  }

  /** Without the rows on one side that the field does not reach. */
  FieldStrip withoutOutside(boolean left) {
    int from = 0;
    int to = rows.size();
    if (left) {
      while (from < to - 1 && rows.get(from).lengthMetres() <= 0) {
        from++;
      }
    } else {
      while (to > 1 && rows.get(to - 1).lengthMetres() <= 0) {
        to--;
      }
    }
    return new FieldStrip(inPattern, centre, rows.subList(from, to));
  }

  /**
   * The strips of a layout, left to right; without those of which no row is in the field, and those
   * whose canopies are not known.
   */
  static List<FieldStrip> of(FieldLayout layout, PlanCanopies canopies) {
    Map<Integer, List<DrivenPass>> byStrip = new TreeMap<>();
    for (DrivenPass pass : layout.passes()) {
      byStrip.computeIfAbsent(pass.strip(), number -> new ArrayList<>()).add(pass);
    }
    List<FieldStrip> strips = new ArrayList<>();
    for (List<DrivenPass> passes : byStrip.values()) {
      strip(layout.plan(), passes, canopies)
          .filter(strip -> strip.squareMetres() > 0)
          .ifPresent(strips::add);
    }
    return strips;
  }

  private static Optional<FieldStrip> strip(
      Plan plan, List<DrivenPass> passes, PlanCanopies canopies) {
    DrivenPass first = passes.get(0);
    PlannedStrip strip = plan.strips().get(first.inPattern());
    PlannedStrip.Border border = strip.border();
    Optional<CanopyTraits> centre = canopies.find(strip.crop(), strip.centre().product());
    Optional<CanopyTraits> edge =
        border == null ? centre : canopies.find(strip.crop(), border.seeding().product());
    if (centre.isEmpty() || edge.isEmpty()) {
      return Optional.empty();
    }
    List<Row> rows = new ArrayList<>();
    for (DrivenPass driven : passes) {
      for (int row = 1; row <= driven.pass().rows(); row++) {
        CanopyTraits canopy = (driven.isBorder(row) ? edge : centre).get();
        rows.add(
            new Row(
                row(driven, rows.size() + 1, driven.pass().rowMetres(row), canopy),
                driven.rowLengthsMetres().get(row - 1)));
      }
    }
    Pass pass = first.pass();
    return Optional.of(
        new FieldStrip(first.inPattern(), row(first, 0, pass.centreMetres(), centre.get()), rows));
  }

  private static CanopyRow row(DrivenPass driven, int number, double offset, CanopyTraits canopy) {
    return new CanopyRow(
        driven.strip(),
        driven.crop(),
        "",
        number,
        offset,
        driven.pass().rowSpacingMetres(),
        canopy);
  }
}
