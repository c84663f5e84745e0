package org.lynchet.prescription.plan;

import java.util.HashMap;
import java.util.Map;

/** Finds the line and column of a key path, such as {@code strips[1].centre.rate}, again. */
final class PlanPlaces {
  private final Map<String, PlanNode> nodes = new HashMap<>();
  private final PlanNode root;
  private final PlanFaults faults;

  PlanPlaces(PlanNode root, PlanFaults faults) {
    this.root = root;
    this.faults = faults;
    add("", root);
  }

  private void add(String path, PlanNode node) {
    nodes.put(path, node);
    if (node instanceof PlanNode.Mapping mapping) {
      mapping
          .entries()
          .forEach((key, value) -> add(path.isEmpty() ? key : path + "." + key, value));
    } else if (node instanceof PlanNode.Listing list) {
      for (int i = 0; i < list.items().size(); i++) {
        add(path + "[" + i + "]", list.items().get(i));
      }
    }
  }

  /** Adds a fault at the value of a key. */
  void fault(String key, String what, String allowed, String next) {
    faults.at(nodes.getOrDefault(key, root), key, what, allowed, next);
  }
}
