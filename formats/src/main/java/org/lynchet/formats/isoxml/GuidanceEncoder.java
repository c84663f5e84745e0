package org.lynchet.formats.isoxml;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.lynchet.formats.XmlOutput;
import org.lynchet.formats.isoxml.TaskSet.Line;
import org.lynchet.formats.isoxml.TaskSet.PartField;
import org.lynchet.formats.isoxml.TaskSet.Version;

/**
 * Writes the guidance lines of a field: in version 4.3 as guidance groups, in version 3.3, which
 * has none, as lines of type 5.
 */
final class GuidanceEncoder {
  private static final int GUIDANCE_LINE = 5;
  private static final int REFERENCE_A = 6;
  private static final int REFERENCE_B = 7;
  private static final int GUIDANCE_POINT = 9;

  /** Version 3.3 knows flags and others. */
  private static final int OTHER = 2;

  /** The pattern is this one line, not repeated to the left or right. */
  private static final int NO_PROPAGATION = 4;

  private static final int FROM_BOTH_ENDS = 1;

  /** Drawn on a computer, not driven. */
  private static final int DESKTOP_GENERATED = 16;

  private final XmlOutput out;
  private final AreaEncoder areas;
  private int groups;

  GuidanceEncoder(XmlOutput out, AreaEncoder areas) {
    this.out = out;
    this.areas = areas;
  }

  /** Writes all lines of a field. */
  void write(PartField field, Version version) {
    if (version == Version.V3_3) {
      field.lines().forEach(line -> segment(line, true));
      return;
    }
    Map<String, List<Line>> byGroup = new LinkedHashMap<>();
    field.lines().forEach(l -> byGroup.computeIfAbsent(l.group(), g -> new ArrayList<>()).add(l));
    byGroup.forEach(this::group);
  }

  private void group(String name, List<Line> lines) {
    groups++;
    out.start("GGP").attribute("A", "GGP" + groups).attribute("B", IsoText.name(name));
    for (Line line : lines) {
      out.start("GPN").attribute("A", line.id()).attribute("B", IsoText.name(line.name()));
      out.attribute("C", line.kind().code());
      out.attribute("E", NO_PROPAGATION).attribute("F", FROM_BOTH_ENDS);
      if (line.headingDegrees() != null) {
        out.attribute("G", IsoText.decimal(line.headingDegrees()));
      }
      out.attribute("I", DESKTOP_GENERATED).attribute("M", "EPSG:4326");
      segment(line, false);
      out.end();
    }
    out.end();
  }

  private void segment(Line line, boolean plainPoints) {
    out.start("LSG").attribute("A", GUIDANCE_LINE);
    if (plainPoints) {
      out.attribute("B", IsoText.name(line.name()));
    }
    if (line.spacingMillimetres() > 0) {
      out.attribute("C", line.spacingMillimetres());
    }
    int last = line.points().size() - 1;
    for (int i = 0; i <= last; i++) {
      int type = i == 0 ? REFERENCE_A : i == last ? REFERENCE_B : GUIDANCE_POINT;
      areas.point(line.points().get(i), plainPoints ? OTHER : type);
    }
    out.end();
  }
}
