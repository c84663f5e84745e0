package org.lynchet.prescription.picture;

import java.util.List;
import org.lynchet.geometry.coverage.Waterway;

/** Draws waterways: pale with teal lines along the page, which no crop has. */
final class WaterwayMarks {
  private static final int FILL = 0xE6F2EF;
  private static final int INK = 0x1B6E63;

  /** How a waterway is filled. */
  static final Look LOOK = new Look(FILL, List.of(Hatch.lines(0, 3, 0.5, INK)));

  private WaterwayMarks() {}

  /** The marks; none if there are no waterways. */
  static List<Mark> of(List<Waterway> waterways, MapPlane plane) {
    Outline outline = Outline.rings();
    waterways.forEach(way -> plane.add(way.polygon(), outline));
    return outline.isEmpty()
        ? List.of()
        : List.of(Mark.Area.of(outline, LOOK), new Mark.Line(outline, INK, 0.6, 0));
  }
}
