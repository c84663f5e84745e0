package org.lynchet.prescription.convert;

import java.util.ArrayList;
import java.util.List;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.index.strtree.STRtree;

/** Finds areas of one task that overlap: a machine would not know which of two rates to take. */
final class AreaOverlaps {
  /** Two areas overlap if they share more than this part of the smaller one. */
  private static final double SHARED_PART = 1e-6;

  /** An area of a feature; no crop if nothing is planted there, which is a matter of all tasks. */
  private record Area(int feature, String crop, Geometry polygons) {
    boolean overlaps(Area other) {
      boolean together = crop.isEmpty() || other.crop.isEmpty() || crop.equals(other.crop);
      return together
          && polygons.intersection(other.polygons).getArea()
              > SHARED_PART * Math.min(polygons.getArea(), other.polygons.getArea());
    }
  }

  private final STRtree index = new STRtree();
  private final List<Area> areas = new ArrayList<>();

  /**
   * Adds a valid area.
   *
   * @param feature the index of its feature
   * @param crop empty if none is planted there or it is not known
   */
  void add(int feature, String crop, Geometry polygons) {
    Area area = new Area(feature, crop, polygons);
    areas.add(area);
    index.insert(polygons.getEnvelopeInternal(), area);
  }

  /** Adds each area that overlaps another one to what is wrong with features. */
  void tell(FeatureFaults wrong) {
    for (Area area : areas) {
      List<?> near = index.query(area.polygons.getEnvelopeInternal());
      if (near.stream().anyMatch(other -> other != area && area.overlaps((Area) other))) {
        wrong.add(
            area.feature,
            "an area that overlaps another one",
            "one rate at each place for each crop",
            "cut the areas apart, or take one of them out");
      }
    }
  }
}
