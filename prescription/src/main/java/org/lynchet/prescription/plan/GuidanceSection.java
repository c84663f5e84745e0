package org.lynchet.prescription.plan;

import java.util.Optional;
import org.lynchet.prescription.plan.PlannedGuidance.AbLineIs;
import org.lynchet.prescription.plan.PlannedGuidance.AlongCurve;
import org.lynchet.prescription.plan.PlannedGuidance.FromFile;
import org.lynchet.prescription.plan.PlannedGuidance.Line;
import org.lynchet.prescription.plan.PlannedGuidance.Position;
import org.lynchet.prescription.plan.PlannedGuidance.ThroughPoint;
import org.lynchet.prescription.plan.PlannedGuidance.ThroughTwoPoints;

/** Reads the section {@code guidance}. */
final class GuidanceSection {
  private static final String FORMS =
      "{a: [lon, lat], b: [lon, lat]}, {through: [lon, lat], heading: degrees} or"
          + " {file: taskdata.zip#GPN1}";

  private static final int MOST_LINES = 10_000;

  private GuidanceSection() {}

  static Optional<PlannedGuidance> read(KeyReader keys) {
    Optional<Line> line =
        keys.has("curve")
            ? keys.find("curve", GuidanceSection::curve)
            : keys.get("ab-line", KeyReader.keys(GuidanceSection::line));
    keys.node("curve");
    if (keys.has("curve") && keys.node("ab-line").isPresent()) {
      keys.fault(
          "curve",
          "an AB line and a curve are given",
          "one of ab-line and curve",
          "remove the one that is not driven");
      line = Optional.empty();
    }
    AbLineIs is =
        keys.find("ab-line-is", WordText.oneOf(AbLineIs.class)).orElse(AbLineIs.PASS_CENTRE);
    PlacementChoices placement = PlacementSection.read(keys);
    if (line.filter(AlongCurve.class::isInstance).isPresent()
        && placement.kind() == PlacementChoices.Kind.BEST) {
      keys.fault(
          "placement",
          "a best placement is looked for along an AB line only, not along a curve",
          "fixed, with a curve",
          "remove it, and move the curve in its file");
      line = Optional.empty();
    }
    return line.map(l -> new PlannedGuidance(l, is, placement));
  }

  /** The file alone, or with the number of the line. */
  private static Optional<Line> curve(PlanNode node, PlanFaults faults) {
    return node instanceof PlanNode.Mapping
        ? KeyReader.keys(GuidanceSection::curveOfSeveral).read(node, faults)
        : NameText.file(node, faults).map(file -> new AlongCurve(file, null));
  }

  private static Optional<Line> curveOfSeveral(KeyReader keys) {
    Optional<String> file = keys.get("file", NameText::file);
    Optional<Integer> number = keys.find("line", NumberText.count(1, MOST_LINES));
    boolean whole = number.isPresent() || !keys.has("line");
    return file.isPresent() && whole
        ? Optional.of(new AlongCurve(file.get(), number.orElse(null)))
        : Optional.empty();
  }

  private static Optional<Line> line(KeyReader keys) {
    boolean byPoints = keys.has("a") || keys.has("b");
    boolean byHeading = keys.has("through") || keys.has("heading");
    boolean byFile = keys.has("file");
    if (byPoints && !byHeading && !byFile) {
      return twoPoints(keys);
    }
    if (byHeading && !byPoints && !byFile) {
      return onePoint(keys);
    }
    if (byFile && !byPoints && !byHeading) {
      return keys.get("file", NameText::file).map(FromFile::new);
    }
    keys.faultOfAll(
        byPoints || byHeading ? "the AB line is given in two forms" : "the AB line is not given",
        FORMS,
        "give it in one of these forms");
    keys.leaveRest();
    return Optional.empty();
  }

  private static Optional<Line> twoPoints(KeyReader keys) {
    Optional<Position> a = keys.get("a", PositionText::read);
    Optional<Position> b = keys.get("b", PositionText::read);
    if (a.isEmpty() || b.isEmpty()) {
      return Optional.empty();
    }
    if (isSame(a.get(), b.get())) {
      keys.fault(
          "b",
          "B is the same point as A",
          "two different points",
          "take two points at the ends of the field");
      return Optional.empty();
    }
    return Optional.of(new ThroughTwoPoints(a.get(), b.get()));
  }

  private static boolean isSame(Position a, Position b) {
    double turn = Math.abs(a.longitudeDegrees() - b.longitudeDegrees()) % 360;
    return turn == 0 && a.latitudeDegrees() == b.latitudeDegrees();
  }

  private static Optional<Line> onePoint(KeyReader keys) {
    Optional<Position> through = keys.get("through", PositionText::read);
    Optional<Double> heading = keys.get("heading", HeadingText::read);
    return through.isPresent() && heading.isPresent()
        ? Optional.of(new ThroughPoint(through.get(), heading.get()))
        : Optional.empty();
  }
}
