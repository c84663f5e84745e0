package org.lynchet.prescription.spraying;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.lynchet.prescription.machine.Sprayer;
import org.lynchet.prescription.plan.Plan;
import org.lynchet.prescription.plan.PlannedHeadland;
import org.lynchet.prescription.plan.PlannedStrip;

/** Finds the sprayer of each crop: the first of the plan that works in it. */
final class CropSprayers {
  private final Map<String, Sprayer> byCrop = new LinkedHashMap<>();

  private CropSprayers() {}

  static CropSprayers of(Plan plan) {
    CropSprayers sprayers = new CropSprayers();
    PlannedHeadland headland = plan.headland();
    Stream.concat(
            plan.strips().stream().map(PlannedStrip::crop),
            headland == null ? Stream.empty() : Stream.of(headland.crop()))
        .forEach(
            crop ->
                plan.machines().values().stream()
                    .filter(Sprayer.class::isInstance)
                    .map(Sprayer.class::cast)
                    .filter(sprayer -> sprayer.crops().isEmpty() || sprayer.crops().contains(crop))
                    .findFirst()
                    .ifPresent(sprayer -> sprayers.byCrop.put(crop, sprayer)));
    return sprayers;
  }

  boolean isEmpty() {
    return byCrop.isEmpty();
  }

  Optional<Sprayer> find(String crop) {
    return Optional.ofNullable(byCrop.get(crop));
  }
}
