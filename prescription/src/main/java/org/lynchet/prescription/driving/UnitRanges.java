package org.lynchet.prescription.driving;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** Shows row units as ranges: {@code 1-2, 11-12}. */
public final class UnitRanges {
  private UnitRanges() {}

  /** Rising numbers as ranges. */
  public static String of(List<Integer> units) {
    List<String> ranges = new ArrayList<>();
    for (int i = 0; i < units.size(); ) {
      int last = i;
      while (last + 1 < units.size() && units.get(last + 1) == units.get(last) + 1) {
        last++;
      }
      ranges.add(i == last ? units.get(i).toString() : units.get(i) + "-" + units.get(last));
      i = last + 1;
    }
    return String.join(", ", ranges);
  }

  /** The row units of each product, in the order of their first units. */
  public static Map<String, List<Integer>> byProduct(LoadingChart chart) {
    Map<String, List<Integer>> units = new LinkedHashMap<>();
    for (int unit = 1; unit <= chart.products().size(); unit++) {
      units.computeIfAbsent(chart.products().get(unit - 1), product -> new ArrayList<>()).add(unit);
    }
    return units;
  }
}
