package org.lynchet.prescription.plan;

import java.util.Optional;

/** Reads the section {@code headland}. */
final class HeadlandSection {
  private final Machines machines;
  private final SeedingReader seedings;

  HeadlandSection(Machines machines, SeedingReader seedings) {
    this.machines = machines;
    this.seedings = seedings;
  }

  Optional<PlannedHeadland> read(KeyReader keys) {
    Optional<Integer> passes = keys.get("passes", NumberText.count(1, 1000));
    Optional<String> planter = keys.get("planted-by", machines::plantedBy);
    Optional<String> crop = keys.get("crop", NameText::crop);
    Optional<Seeding> seeding =
        seedings.read(keys, "headland", crop, planter.flatMap(machines::findPlanter));
    boolean aroundHoles = keys.find("around-holes", WordText::flag).orElse(true);
    return passes.isPresent() && planter.isPresent() && crop.isPresent() && seeding.isPresent()
        ? Optional.of(
            new PlannedHeadland(
                passes.get(), planter.get(), aroundHoles, crop.get(), seeding.get()))
        : Optional.empty();
  }
}
