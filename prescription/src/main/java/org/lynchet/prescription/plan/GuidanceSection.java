package org.lynchet.prescription.plan;

import java.util.Optional;
import org.lynchet.prescription.plan.PlannedGuidance.AbLineIs;
import org.lynchet.prescription.plan.PlannedGuidance.Line;
import org.lynchet.prescription.plan.PlannedGuidance.Position;
import org.lynchet.prescription.plan.PlannedGuidance.ThroughPoint;
import org.lynchet.prescription.plan.PlannedGuidance.ThroughTwoPoints;

/** Reads the section {@code guidance}. */
final class GuidanceSection {
  private static final String FORMS =
      "{a: [lon, lat], b: [lon, lat]} or {through: [lon, lat], heading: degrees}";

  private GuidanceSection() {}

  static Optional<PlannedGuidance> read(KeyReader plan) {
    return plan.getKeys("guidance").flatMap(GuidanceSection::guidance);
  }

  private static Optional<PlannedGuidance> guidance(KeyReader keys) {
    Optional<Line> line = keys.getKeys("ab-line").flatMap(GuidanceSection::line);
    AbLineIs is = keys.findWord("ab-line-is", AbLineIs.class).orElse(AbLineIs.PASS_CENTRE);
    keys.close();
    return line.map(l -> new PlannedGuidance(l, is));
  }

  private static Optional<Line> line(KeyReader keys) {
    boolean byPoints = keys.names().contains("a") || keys.names().contains("b");
    boolean byHeading = keys.names().contains("through") || keys.names().contains("heading");
    if (byPoints == byHeading) {
      keys.find("a");
      keys.find("b");
      keys.find("through");
      keys.find("heading");
      keys.close();
      keys.fault(
          "a",
          byPoints ? "the AB line is given twice" : "the AB line is not given",
          FORMS,
          "give it in one of the two forms");
      return Optional.empty();
    }
    Optional<Line> line = byPoints ? twoPoints(keys) : onePoint(keys);
    keys.close();
    return line;
  }

  private static Optional<Line> twoPoints(KeyReader keys) {
    Optional<Position> a = position(keys, "a");
    Optional<Position> b = position(keys, "b");
    if (a.isEmpty() || b.isEmpty()) {
      return Optional.empty();
    }
    if (a.equals(b)) {
      keys.fault(
          "b", "B is the same point as A", "two different points", "take a point farther along");
      return Optional.empty();
    }
    return Optional.of(new ThroughTwoPoints(a.get(), b.get()));
  }

  private static Optional<Line> onePoint(KeyReader keys) {
    Optional<Position> through = position(keys, "through");
    Optional<Double> heading =
        keys.get("heading")
            .flatMap(
                node ->
                    keys.number(
                        node, keys.pathOf("heading"), 0, 360, "degrees clockwise from true north"));
    if (heading.isPresent() && heading.get() == 360) {
      keys.fault("heading", "a heading of 360 degrees", "0 or more, below 360", "write 0");
      return Optional.empty();
    }
    return through.isPresent() && heading.isPresent()
        ? Optional.of(new ThroughPoint(through.get(), heading.get()))
        : Optional.empty();
  }

  private static Optional<Position> position(KeyReader keys, String key) {
    Optional<PlanNode> node = keys.get(key);
    if (node.isEmpty()) {
      return Optional.empty();
    }
    if (!(node.get() instanceof PlanNode.Listing list) || list.items().size() != 2) {
      keys.fault(
          key,
          node.get().kind() + " is not a position",
          "[longitude, latitude] in degrees",
          "write two numbers in brackets, longitude first");
      return Optional.empty();
    }
    String path = keys.pathOf(key);
    Optional<Double> longitude =
        keys.number(list.items().get(0), path + "[0]", -180, 180, "degrees of longitude");
    Optional<Double> latitude =
        keys.number(
            list.items().get(1), path + "[1]", -90, 90, "degrees of latitude, the second number");
    return longitude.isPresent() && latitude.isPresent()
        ? Optional.of(new Position(longitude.get(), latitude.get()))
        : Optional.empty();
  }
}
