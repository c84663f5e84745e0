package org.lynchet.prescription.zone;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import org.lynchet.geometry.coverage.ManagementZone;
import org.lynchet.geometry.coverage.RegionLabel;
import org.lynchet.prescription.fault.Faults;
import org.lynchet.prescription.plan.Plan;
import org.lynchet.prescription.plan.PlannedField;
import org.lynchet.prescription.plan.PlannedHeadland;
import org.lynchet.prescription.plan.PlannedStrip;
import org.lynchet.prescription.plan.Seeding;

/** Tells which management zone a region is in, and that every seeding has a rate there. */
final class ZoneRates {
  private final Plan plan;
  private final List<ManagementZone> zones;

  ZoneRates(Plan plan, List<ManagementZone> zones) {
    this.plan = plan;
    this.zones = zones;
  }

  /** The management zone of a region; empty where there are none. */
  Optional<String> nameOf(RegionLabel region) {
    PlannedField.ManagementZoneMap map = plan.field().managementZones();
    if (map == null) {
      return Optional.empty();
    }
    return region.managementZone() == RegionLabel.NO_ZONE
        ? Optional.ofNullable(map.elsewhere())
        : Optional.of(zones.get(region.managementZone()).name());
  }

  /** Adds a fault for each seeding that goes by management zone and lacks one of these. */
  void checkRates(Set<String> zonesInField, Faults faults) {
    for (Seeding seeding : seedings()) {
      for (String zone : new TreeSet<>(zonesInField)) {
        if (seeding.findRate(zone).isEmpty()) {
          faults.add(
              "management zone '" + zone + "' has no rate",
              plan.place(seeding.key()),
              "a rate for each management zone in the field: "
                  + String.join(", ", new TreeSet<>(zonesInField)),
              "add a line '" + zone + ": ... seeds/ac' there");
        }
      }
    }
  }

  private List<Seeding> seedings() {
    List<Seeding> seedings = new ArrayList<>();
    PlannedHeadland headland = plan.headland();
    if (headland != null) {
      seedings.add(headland.seeding());
    }
    for (PlannedStrip strip : plan.strips()) {
      seedings.add(strip.centre());
      PlannedStrip.Border border = strip.border();
      if (border != null) {
        seedings.add(border.seeding());
      }
    }
    return seedings;
  }
}
