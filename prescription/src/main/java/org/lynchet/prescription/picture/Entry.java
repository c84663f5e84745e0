package org.lynchet.prescription.picture;

import org.jspecify.annotations.Nullable;
import org.lynchet.prescription.quantity.SeedingRate;
import org.lynchet.prescription.zone.Zone;

/** What the zones of one entry of the legend have in common. */
record Entry(
    String crop,
    Zone.Kind kind,
    String product,
    SeedingRate rate,
    @Nullable String managementZone) {

  static Entry of(Zone zone) {
    return new Entry(zone.crop(), zone.kind(), zone.product(), zone.rate(), zone.managementZone());
  }
}
