package org.lynchet.prescription.response;

import java.util.ArrayList;
import java.util.List;
import java.util.NavigableSet;
import java.util.TreeMap;
import java.util.TreeSet;
import org.lynchet.prescription.defaults.Defaults;
import org.lynchet.prescription.light.CanopyRow;
import org.lynchet.prescription.light.CanopyTraits;
import org.lynchet.prescription.light.LightRequest;

/** Finds how high a short-stature product on the border of each strip would be. */
final class ShortHeights {
  /**
   * A strip that may have one.
   *
   * @param strip its number in the pattern
   * @param metres height of the short-stature product
   */
  record OfStrip(int strip, double metres) {}

  private ShortHeights() {}

  static List<OfStrip> of(LightRequest request, Defaults defaults) {
    TreeMap<Integer, NavigableSet<Double>> heights = new TreeMap<>();
    TreeMap<Integer, String> crops = new TreeMap<>();
    for (CanopyRow row : request.rows()) {
      CanopyTraits canopy = row.canopy();
      if (canopy != null) {
        heights.computeIfAbsent(row.strip(), strip -> new TreeSet<>()).add(canopy.heightMetres());
        crops.put(row.strip(), row.crop());
      }
    }
    List<OfStrip> strips = new ArrayList<>();
    heights.forEach(
        (strip, ofRows) -> {
          String key =
              "canopies."
                  + defaults.nameOf(crops.getOrDefault(strip, ""))
                  + ".short-stature-height-metres";
          if (ofRows.size() > 1) {
            strips.add(new OfStrip(strip, ofRows.first()));
          } else if (defaults.has(key)) {
            strips.add(new OfStrip(strip, defaults.number(key)));
          }
        });
    return strips;
  }
}
