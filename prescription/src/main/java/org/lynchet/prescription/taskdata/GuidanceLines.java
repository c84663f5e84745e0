package org.lynchet.prescription.taskdata;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.locationtech.jts.geom.Coordinate;
import org.lynchet.formats.isoxml.TaskData;
import org.lynchet.formats.isoxml.TaskSet.Kind;
import org.lynchet.formats.isoxml.TaskSet.Line;
import org.lynchet.formats.isoxml.TaskSet.Version;
import org.lynchet.geometry.guidance.Curve;
import org.lynchet.geometry.guidance.OffsetFrame;
import org.lynchet.prescription.machine.Machine;
import org.lynchet.prescription.plan.PlannedGuidance.ThroughPoint;
import org.lynchet.prescription.zone.DrivenPass;
import org.lynchet.prescription.zone.FieldLayout;
import org.lynchet.prescription.zone.PlacedAbLine;

/** Makes the guidance lines of a field: its AB line or curve, and each pass of each machine. */
final class GuidanceLines {
  /** Version 4.3 allows nine digits after the point. */
  private static final int HEADING_DECIMALS = 9;

  private static final String AB_LINE = "AB line";

  private final FieldLayout layout;
  private final boolean grouped;
  private final List<Line> lines = new ArrayList<>();

  GuidanceLines(FieldLayout layout, Version version) {
    this.layout = layout;
    this.grouped = version == Version.V4_3;
  }

  /**
   * All lines, the AB line or the curve first, then by machine in the order of their first passes.
   */
  List<Line> all() {
    if (layout.guidance() instanceof Curve curve) {
      add(curve.name(), curve.name(), Kind.CURVE, curve.points(), null, 0);
    } else {
      abLine();
    }
    layout.passes().stream().map(DrivenPass::machine).distinct().forEach(this::passes);
    return lines;
  }

  /** The AB line where it was placed, which need not be where the plan has it. */
  private void abLine() {
    PlacedAbLine placed = PlacedAbLine.of(layout);
    if (layout.plan().guidance().line() instanceof ThroughPoint && grouped) {
      add(AB_LINE, AB_LINE, Kind.A_PLUS, List.of(placed.a()), heading(layout.frame()), 0);
    } else {
      add(AB_LINE, AB_LINE, Kind.AB, List.of(placed.a(), placed.b()), null, 0);
    }
  }

  private static BigDecimal heading(OffsetFrame frame) {
    BigDecimal heading =
        BigDecimal.valueOf(frame.headingDegrees())
            .setScale(HEADING_DECIMALS, RoundingMode.HALF_UP)
            .stripTrailingZeros();
    return new BigDecimal(heading.toPlainString());
  }

  private void passes(String machine) {
    Machine planned = layout.plan().machines().get(machine);
    long width = planned == null ? 0 : Math.round(planned.workingWidthMetres() * 1000);
    for (DrivenPass pass : layout.passes()) {
      if (pass.machine().equals(machine)) {
        List<Coordinate> points = points(pass);
        Kind kind = points.size() > 2 ? Kind.CURVE : Kind.AB;
        add(machine, "pass " + pass.pass().number(), kind, points, null, width);
      }
    }
  }

  /**
   * A pass from its beginning to its end, over gaps: two points along the AB line, or the whole
   * line along a curve.
   */
  private List<Coordinate> points(DrivenPass pass) {
    List<Coordinate> points = List.of(pass.line().getCoordinates());
    Comparator<Coordinate> byAlong = Comparator.comparingDouble(layout.guidance()::alongMetres);
    Coordinate first = points.stream().min(byAlong).orElseThrow();
    Coordinate last = points.stream().max(byAlong).orElseThrow();
    return layout.guidance() instanceof Curve curve
        ? curve.line(pass.pass().centreMetres(), curve.alongMetres(first), curve.alongMetres(last))
        : List.of(first, last);
  }

  private void add(
      String group,
      String name,
      Kind kind,
      List<Coordinate> points,
      @Nullable BigDecimal heading,
      long width) {
    lines.add(
        new Line(
            (grouped ? "GPN" : "LSG") + (lines.size() + 1),
            grouped ? TaskData.name(group) : "",
            TaskData.name(grouped ? name : group.equals(name) ? name : group + " " + name),
            kind,
            points.stream().map(SentPlaces::place).toList(),
            heading,
            width));
  }
}
