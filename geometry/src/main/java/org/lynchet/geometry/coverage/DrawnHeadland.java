package org.lynchet.geometry.coverage;

import org.jspecify.annotations.Nullable;
import org.locationtech.jts.geom.Geometry;

/** Draws the headland of a field once, for all that is divided or drawn by it. */
public final class DrawnHeadland {
  private final FieldShape field;
  private final Headland headland;
  private final Geometry area;
  private final @Nullable EndHeadland ends;
  private final Geometry inside;

  private DrawnHeadland(FieldShape field, Headland headland) {
    this.field = field;
    this.headland = headland;
    area = RegionDivider.polygons(field, headland.aroundHoles());
    HeadlandEnds where = headland.ends();
    ends = where == null ? null : new EndHeadland(area, headland, where);
    inside =
        ends == null
            ? InnerEdge.inside(area, headland.widthMetres())
            : ends.inside(headland.widthMetres());
  }

  /** Draws. */
  public static DrawnHeadland of(FieldShape field, Headland headland) {
    return new DrawnHeadland(field, headland);
  }

  /** Its width. */
  public double widthMetres() {
    return headland.widthMetres();
  }

  FieldShape field() {
    return field;
  }

  /** Whether holes of the field are filled in what it was drawn along. */
  boolean passesHoles() {
    return !headland.aroundHoles();
  }

  /** What it was drawn along: the field, with its holes or filled. */
  Geometry area() {
    return area;
  }

  /** Where it lies if only where rows end, or null if all around. */
  @Nullable EndHeadland ends() {
    return ends;
  }

  /** What is left of the area inside of it. */
  Geometry inside() {
    return inside;
  }
}
