package org.lynchet.prescription.picture;

import java.util.ArrayList;
import java.util.List;

/** Remembers where labels stand on the map, so that none comes to lie on another or off it. */
final class Labels {
  private final Box map;
  private final List<Box> taken = new ArrayList<>();

  Labels(Box map) {
    this.map = map;
  }

  boolean isFree(Box box) {
    return map.contains(box) && taken.stream().noneMatch(box::overlaps);
  }

  void take(Box box) {
    taken.add(box);
  }
}
