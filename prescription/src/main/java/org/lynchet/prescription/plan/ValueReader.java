package org.lynchet.prescription.plan;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Reads a value of a plan; gives nothing after adding the faults that keep it from being one.
 *
 * @param <T> what it reads
 */
interface ValueReader<T> {
  Optional<T> read(PlanNode node, PlanFaults faults);

  /** Reads a list of at least one value; items with faults are left out. */
  static <T> ValueReader<List<T>> listOf(ValueReader<T> item) {
    return (node, faults) -> {
      if (!(node instanceof PlanNode.Listing list) || list.items().isEmpty()) {
        faults.add(
            node.place(),
            node instanceof PlanNode.Listing
                ? "the list is empty"
                : node.kind() + " stands where a list is wanted",
            "a list with at least one item: [...], or lines that begin with '- '",
            "see the key reference");
        return Optional.empty();
      }
      List<T> values = new ArrayList<>();
      list.items().forEach(one -> item.read(one, faults).ifPresent(values::add));
      return Optional.of(values);
    };
  }
}
