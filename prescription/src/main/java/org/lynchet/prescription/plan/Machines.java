package org.lynchet.prescription.plan;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import org.lynchet.prescription.machine.Machine;
import org.lynchet.prescription.machine.Planter;

/**
 * Finds the planter that {@code planted-by} names.
 *
 * @param byName the machines that the plan has, nothing for one that has faults; nothing at all if
 *     the whole section cannot be read
 */
record Machines(Optional<Map<String, Optional<Machine>>> byName) {

  /** The machines without faults, in the plan's order. */
  Map<String, Machine> whole() {
    Map<String, Machine> whole = new LinkedHashMap<>();
    byName.ifPresent(
        all -> all.forEach((name, machine) -> machine.ifPresent(m -> whole.put(name, m))));
    return whole;
  }

  /** The planter of a name, if it has no faults. */
  Optional<Planter> findPlanter(String name) {
    return whole().get(name) instanceof Planter planter ? Optional.of(planter) : Optional.empty();
  }

  /** Reads the name of a planter. */
  Optional<String> plantedBy(PlanNode node, PlanFaults faults) {
    Optional<String> name = NameText.name(node, faults);
    if (name.isEmpty() || byName.isEmpty()) {
      return name;
    }
    Map<String, Optional<Machine>> all = byName.get();
    Optional<Machine> machine = all.getOrDefault(name.get(), Optional.empty());
    if (!all.containsKey(name.get())) {
      refuse(
          node,
          faults,
          "no machine is called " + node.kind() + NearName.hint(all.keySet(), name.get()));
    } else if (machine.isPresent() && !(machine.get() instanceof Planter)) {
      refuse(node, faults, "machine " + node.kind() + " is not a planter");
    }
    return name;
  }

  private void refuse(PlanNode node, PlanFaults faults, String what) {
    String planters =
        whole().values().stream()
            .filter(Planter.class::isInstance)
            .map(machine -> Shown.clipped(machine.name()))
            .collect(Collectors.joining(", "));
    faults.add(
        node.place(),
        what,
        planters.isEmpty() ? "a machine of kind planter" : "a planter of the plan: " + planters,
        "name a planter of the section machines, or add it there");
  }
}
