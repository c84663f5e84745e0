package org.lynchet.formats.isoxml;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.locationtech.jts.geom.Coordinate;
import org.lynchet.formats.FaultList;
import org.lynchet.formats.XmlElement;
import org.lynchet.formats.isoxml.TaskSet.Kind;
import org.lynchet.formats.isoxml.TaskSet.Line;

/** Reads guidance lines: patterns of guidance groups, and plain lines of type 5 in a field. */
final class GuidanceDecoder {
  private static final String GUIDANCE_LINE = "5";

  private final TaskTree tree;
  private final AreaDecoder areas;
  private final FaultList faults;

  GuidanceDecoder(TaskTree tree, AreaDecoder areas, FaultList faults) {
    this.tree = tree;
    this.areas = areas;
    this.faults = faults;
  }

  /** The lines of a field, in the file's order. */
  List<Line> lines(XmlElement field) {
    List<Line> lines = new ArrayList<>();
    int plain = 0;
    for (XmlElement segment : field.children("LSG")) {
      if (segment.attribute("A").equals(GUIDANCE_LINE)) {
        plain++;
        lines.add(plainLine("LSG" + plain, segment));
      }
    }
    for (XmlElement group : field.children("GGP")) {
      for (XmlElement pattern : group.children("GPN")) {
        pattern(group, pattern, lines);
      }
    }
    return lines;
  }

  private Line plainLine(String id, XmlElement segment) {
    List<Coordinate> points = areas.points(segment);
    Kind kind = points.size() == 2 ? Kind.AB : Kind.CURVE;
    return new Line(
        id, "", segment.attribute("B"), kind, points, null, IsoNumbers.whole(segment, "C", 0));
  }

  private void pattern(XmlElement group, XmlElement pattern, List<Line> lines) {
    Optional<Kind> kind = Kind.of(IsoNumbers.whole(pattern, "C", 0));
    List<XmlElement> segments = pattern.children("LSG");
    if (kind.isEmpty() || segments.size() != 1) {
      faults.add(
          "a guidance pattern of type '"
              + pattern.attribute("C")
              + "' with "
              + segments.size()
              + " lines",
          tree.where(pattern),
          "type 1 to 5 and one line (LSG)",
          "export the guidance line again");
      return;
    }
    XmlElement segment = segments.get(0);
    lines.add(
        new Line(
            pattern.attribute("A"),
            group.attribute("B"),
            pattern.attribute("B"),
            kind.get(),
            areas.points(segment),
            heading(pattern),
            IsoNumbers.whole(segment, "C", 0)));
  }

  private static @Nullable BigDecimal heading(XmlElement pattern) {
    String text = pattern.attribute("G");
    return text.matches("[+-]?[0-9]{1,3}(\\.[0-9]{0,20})?") ? new BigDecimal(text) : null;
  }
}
