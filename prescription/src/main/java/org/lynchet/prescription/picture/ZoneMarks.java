package org.lynchet.prescription.picture;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalInt;
import org.lynchet.prescription.zone.Zone;

/**
 * Draws the zones: one area for all that look alike. Where they are narrower than the marks of a
 * look are apart, the marks are left out: they would hide the colour.
 */
final class ZoneMarks {
  /** Covers the hairline that anti-aliasing leaves between neighbours. */
  private static final double SEAM = 0.3;

  /** The seam is no more than this share of a zone's width. */
  private static final double SEAM_SHARE = 0.1;

  private ZoneMarks() {}

  static List<Mark> of(Entries entries, MapPlane plane) {
    Map<Look, Outline> outlines = new LinkedHashMap<>();
    for (Entry entry : entries.list()) {
      Outline outline = outlines.computeIfAbsent(entries.look(entry), look -> Outline.rings());
      entries.zones(entry).forEach(zone -> plane.add(zone.polygon(), outline));
    }
    List<Mark> marks = new ArrayList<>();
    outlines.forEach(
        (look, outline) -> {
          double width = outline.meanWidth();
          marks.add(new Mark.Line(outline, look.fill(), Math.min(SEAM, SEAM_SHARE * width), 0));
          marks.add(Mark.Area.of(outline, plainWhereNarrow(look, width)));
        });
    return marks;
  }

  private static Look plainWhereNarrow(Look look, double width) {
    return new Look(
        look.fill(), look.hatches().stream().filter(hatch -> hatch.spacing() <= width).toList());
  }

  /** What lies over zones in partial passes. */
  static List<Mark> partial(List<Zone> zones, Looks looks, MapPlane plane) {
    Outline outline = Outline.rings();
    zones.stream().filter(Zone::partial).forEach(zone -> plane.add(zone.polygon(), outline));
    return outline.isEmpty()
        ? List.of()
        : List.of(new Mark.Area(outline, OptionalInt.empty(), looks.partial()));
  }
}
