package org.lynchet.prescription.plan;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/** Sees to it that a product is of one crop in the whole plan. */
final class ProductCrops {
  private record FirstUse(String crop, Place place) {}

  private final Map<String, FirstUse> firstUses = new LinkedHashMap<>();
  private final PlanFaults faults;

  ProductCrops(PlanFaults faults) {
    this.faults = faults;
  }

  /** The products that were noted, in the order of reading. */
  Set<String> products() {
    return firstUses.keySet();
  }

  /** The crop of a product, if it was noted. */
  Optional<String> cropOf(String product) {
    return Optional.ofNullable(firstUses.get(product)).map(FirstUse::crop);
  }

  /** Notes that a plan uses a product as one of a crop. */
  void add(String product, String crop, Optional<PlanNode> node) {
    if (node.isEmpty()) {
      return;
    }
    Place place = node.get().place();
    FirstUse first = firstUses.putIfAbsent(product, new FirstUse(crop, place));
    if (first != null && !first.crop().equals(crop)) {
      faults.add(
          place,
          "product "
              + Shown.quoted(product)
              + " is "
              + crop
              + " here, "
              + first.crop()
              + " in line "
              + first.place().line(),
          "one crop for a product",
          "correct one of the two");
    }
  }
}
