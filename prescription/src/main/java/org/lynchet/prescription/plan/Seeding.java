package org.lynchet.prescription.plan;

import java.io.Serializable;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.lynchet.prescription.quantity.AreaUnit;
import org.lynchet.prescription.quantity.SeedingRate;

/**
 * A product and its seeding rate: one for everywhere, or one per management zone.
 *
 * @param product the hybrid or variety
 * @param everywhere the one rate, or null if it goes by management zone
 * @param byManagementZone rate by the zone's name, in the plan's order; empty if there is one rate
 * @param key the key of the rate in the plan, such as {@code strips[0].centre.rate}, for messages
 */
public record Seeding(
    String product,
    @Nullable SeedingRate everywhere,
    Map<String, SeedingRate> byManagementZone,
    String key)
    implements Serializable {

  /** Copies the map, keeping its order. */
  public Seeding {
    byManagementZone = Collections.unmodifiableMap(new LinkedHashMap<>(byManagementZone));
  }

  /** The rate in a management zone, or outside any if null; empty if the plan gives none. */
  public Optional<SeedingRate> findRate(@Nullable String managementZone) {
    if (everywhere != null) {
      return Optional.of(everywhere);
    }
    return Optional.ofNullable(
        managementZone == null ? null : byManagementZone.get(managementZone));
  }

  /** The area that its first rate is per; the acre if there is none. */
  public AreaUnit per() {
    return everywhere != null
        ? everywhere.per()
        : byManagementZone.values().stream()
            .findFirst()
            .map(SeedingRate::per)
            .orElse(AreaUnit.ACRE);
  }
}
