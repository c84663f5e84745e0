package org.lynchet.prescription.taskdata;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.lynchet.formats.isoxml.TaskSet.Kind;
import org.lynchet.formats.isoxml.TaskSet.Line;
import org.lynchet.formats.isoxml.TaskSet.Version;
import org.lynchet.geometry.guidance.Curve;
import org.lynchet.geometry.guidance.OffsetFrame;
import org.lynchet.prescription.machine.Machine;
import org.lynchet.prescription.machine.Sprayer;
import org.lynchet.prescription.plan.PlannedGuidance.ThroughPoint;
import org.lynchet.prescription.quantity.Length;
import org.lynchet.prescription.spraying.SprayPass;
import org.lynchet.prescription.zone.DrivenPass;
import org.lynchet.prescription.zone.FieldLayout;
import org.lynchet.prescription.zone.PlacedAbLine;

/**
 * Makes the guidance lines of a field: its AB line or curve, each pass of each planter, and each
 * spray pass of each crop. The headland has none: its passes close around the field, and a guidance
 * pattern has two ends; terminals draw them by the boundary.
 */
final class GuidanceLines {
  /** Version 4.3 allows nine digits after the point. */
  private static final int HEADING_DECIMALS = 9;

  private static final double MILLIMETRES = 1000;
  private static final String AB_LINE = "AB line";

  private final FieldLayout layout;
  private final boolean grouped;
  private final LineNames names = new LineNames();
  private final List<Line> lines = new ArrayList<>();

  GuidanceLines(FieldLayout layout, Version version) {
    this.layout = layout;
    this.grouped = version == Version.V4_3;
  }

  /**
   * All lines: the AB line or the curve, then by planter in the order of their first passes, then
   * by sprayed crop in the order of their first areas.
   */
  List<Line> all() {
    if (layout.guidance() instanceof Curve curve) {
      reference(curve.name(), Kind.CURVE, curve.points(), null);
    } else {
      abLine();
    }
    layout.passes().stream().map(DrivenPass::machine).distinct().forEach(this::passes);
    layout.spraying().crops().forEach(this::sprayPasses);
    return lines;
  }

  /** The AB line where it was placed, which need not be where the plan has it. */
  private void abLine() {
    PlacedAbLine placed = PlacedAbLine.of(layout);
    if (layout.plan().guidance().line() instanceof ThroughPoint && grouped) {
      reference(AB_LINE, Kind.A_PLUS, List.of(placed.a()), heading(layout.frame()));
    } else {
      reference(AB_LINE, Kind.AB, List.of(placed.a(), placed.b()), null);
    }
  }

  private static BigDecimal heading(OffsetFrame frame) {
    BigDecimal heading =
        BigDecimal.valueOf(frame.headingDegrees())
            .setScale(HEADING_DECIMALS, RoundingMode.HALF_UP)
            .stripTrailingZeros();
    return new BigDecimal(heading.toPlainString());
  }

  /** The line that all others were laid by, a group of its own. */
  private void reference(
      String name, Kind kind, List<Coordinate> points, @Nullable BigDecimal heading) {
    String unique = names.of(List.of(), name);
    add(grouped ? unique : "", unique, kind, points, heading, 0);
  }

  private void passes(String machine) {
    Machine planned = layout.plan().machines().get(machine);
    double width = planned == null ? 0 : planned.workingWidthMetres();
    Group group = new Group(List.of(machine));
    for (DrivenPass pass : layout.passes()) {
      if (pass.machine().equals(machine)) {
        group.add("pass " + pass.pass().number(), pass.line(), pass.pass().centreMetres(), width);
      }
    }
  }

  private void sprayPasses(String crop) {
    List<SprayPass> passes =
        layout.spraying().passes().stream().filter(pass -> pass.crop().equals(crop)).toList();
    if (passes.isEmpty()) {
      return;
    }
    Group group = new Group(List.of(passes.get(0).machine(), crop));
    for (SprayPass pass : passes) {
      String name = "spray " + pass.number() + " " + open(pass);
      group.add(name, pass.line(), pass.offsetMetres(), sprayedMetres(pass));
    }
  }

  /** Which sections are open, as short as a terminal's list needs it. */
  private static String open(SprayPass pass) {
    if (pass.firstOpen() == 0) {
      return "all shut";
    }
    return pass.firstOpen() == pass.lastOpen()
        ? "open " + pass.firstOpen()
        : "open " + pass.firstOpen() + "-" + pass.lastOpen();
  }

  /** How wide the open sections are together; 0 if none may be open. */
  private double sprayedMetres(SprayPass pass) {
    if (pass.firstOpen() == 0
        || !(layout.plan().machines().get(pass.machine()) instanceof Sprayer sprayer)) {
      return 0;
    }
    Length section = sprayer.section();
    return section == null
        ? sprayer.workingWidthMetres()
        : section.metres() * (pass.lastOpen() - pass.firstOpen() + 1);
  }

  /** The lines of one machine, in version 4.3 under a name of their own. */
  private final class Group {
    private final List<String> parts;
    private final String name;

    Group(List<String> parts) {
      this.parts = parts;
      this.name = grouped ? names.of(parts, "") : "";
    }

    void add(String name, Geometry line, double offsetMetres, double widthMetres) {
      List<Coordinate> points = points(line, offsetMetres);
      GuidanceLines.this.add(
          this.name,
          grouped ? name : names.of(parts, name),
          points.size() > 2 ? Kind.CURVE : Kind.AB,
          points,
          null,
          Math.round(widthMetres * MILLIMETRES));
    }
  }

  /**
   * A pass from its beginning to its end, over gaps: two points along the AB line, or the whole
   * line along a curve.
   */
  private List<Coordinate> points(Geometry line, double offsetMetres) {
    List<Coordinate> points = List.of(line.getCoordinates());
    Comparator<Coordinate> byAlong = Comparator.comparingDouble(layout.guidance()::alongMetres);
    Coordinate first = points.stream().min(byAlong).orElseThrow();
    Coordinate last = points.stream().max(byAlong).orElseThrow();
    return layout.guidance() instanceof Curve curve
        ? curve.line(offsetMetres, curve.alongMetres(first), curve.alongMetres(last))
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
            group,
            name,
            kind,
            points.stream().map(SentPlaces::place).toList(),
            heading,
            width));
  }
}
