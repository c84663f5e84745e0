package org.lynchet.formats.isoxml;

import java.util.List;
import java.util.Optional;
import org.lynchet.formats.FaultList;
import org.lynchet.formats.XmlElement;
import org.lynchet.formats.isoxml.TaskSet.Kind;

/**
 * Checks that a guidance pattern has the points of its kind: an AB line A and B, a line by point
 * and heading (A+) its point and its heading, a curve A and B with guidance points between them.
 */
final class PatternCheck {
  private static final String REFERENCE_A = "6";
  private static final String REFERENCE_B = "7";

  private final TaskTree tree;
  private final FaultList faults;

  PatternCheck(TaskTree tree, FaultList faults) {
    this.tree = tree;
    this.faults = faults;
  }

  void check(XmlElement pattern) {
    List<XmlElement> lines = pattern.children("LSG");
    if (lines.size() != 1) {
      fault(pattern, "a guidance pattern of " + lines.size() + " lines", "exactly one line (LSG)");
      return;
    }
    if (!lines.get(0).attribute("A").equals("5")) {
      fault(pattern, "a guidance pattern whose line is of another type", "a line (LSG) of type 5");
    }
    List<String> points =
        lines.get(0).children("PNT").stream().map(point -> point.attribute("A")).toList();
    Optional<Kind> kind = Kind.of(IsoNumbers.whole(pattern, "C", 0));
    if (kind.equals(Optional.of(Kind.AB)) && points.size() != 2) {
      fault(pattern, "an AB line of " + points.size() + " points", "two points, A and B");
    } else if (kind.equals(Optional.of(Kind.AB)) || kind.equals(Optional.of(Kind.CURVE))) {
      checkEnds(pattern, points);
    } else if (kind.equals(Optional.of(Kind.A_PLUS))) {
      checkPointAndHeading(pattern, points);
    }
  }

  private void checkEnds(XmlElement pattern, List<String> points) {
    if (points.size() < 2) {
      fault(pattern, "a curve of " + points.size() + " points", "two points or more");
    } else if (!points.get(0).equals(REFERENCE_A)
        || !points.get(points.size() - 1).equals(REFERENCE_B)) {
      fault(
          pattern,
          "a guidance line whose ends are points of types "
              + points.get(0)
              + " and "
              + last(points),
          "A (type 6) first and B (type 7) last");
    }
  }

  private void checkPointAndHeading(XmlElement pattern, List<String> points) {
    if (!points.equals(List.of(REFERENCE_A))) {
      fault(pattern, "an A+ pattern of " + points.size() + " points", "one point, A (type 6)");
    }
    if (pattern.attribute("G").isEmpty()) {
      fault(pattern, "an A+ pattern without a heading", "the heading in G");
    }
  }

  private static String last(List<String> points) {
    return points.get(points.size() - 1);
  }

  private void fault(XmlElement pattern, String what, String allowed) {
    faults.add(what, tree.where(pattern), allowed, "export the guidance line again");
  }
}
