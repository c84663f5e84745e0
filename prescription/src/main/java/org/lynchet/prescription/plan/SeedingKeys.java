package org.lynchet.prescription.plan;

import java.nio.charset.StandardCharsets;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import org.lynchet.prescription.quantity.SeedingRate;

/** Reads crops, products and rates. */
final class SeedingKeys {
  private static final int LONGEST_PRODUCT = 40;
  private static final String CROP_FORM = "[a-z0-9][a-z0-9-]{0,31}";

  private SeedingKeys() {}

  /** A crop; its name becomes a file name. */
  static Optional<String> crop(KeyReader keys) {
    Optional<String> crop = keys.getText("crop");
    if (crop.isPresent() && !crop.get().matches(CROP_FORM)) {
      keys.fault(
          "crop",
          "'" + crop.get() + "' cannot be the name of a file",
          "1 to 32 lower-case letters a to z, digits and dashes",
          "write it like that");
      return Optional.empty();
    }
    return crop;
  }

  /** A product and its rate. */
  static Optional<Seeding> seeding(KeyReader keys) {
    Optional<String> product = keys.getText("product");
    if (product.isPresent()
        && product.get().getBytes(StandardCharsets.UTF_8).length > LONGEST_PRODUCT) {
      keys.fault(
          "product",
          "the product's name is too long for a shapefile",
          "at most " + LONGEST_PRODUCT + " bytes",
          "shorten it");
      product = Optional.empty();
    }
    Optional<PlanNode> rate = keys.get("rate");
    Map<String, SeedingRate> byZone = new LinkedHashMap<>();
    Optional<SeedingRate> everywhere = Optional.empty();
    if (rate.isPresent() && rate.get() instanceof PlanNode.Mapping) {
      byZone = rates(keys);
    } else if (rate.isPresent()) {
      everywhere = keys.getRate("rate");
    }
    return product.isPresent() && (everywhere.isPresent() || !byZone.isEmpty())
        ? Optional.of(
            new Seeding(product.get(), everywhere.orElse(null), byZone, keys.pathOf("rate")))
        : Optional.empty();
  }

  private static Map<String, SeedingRate> rates(KeyReader keys) {
    Map<String, SeedingRate> rates = new LinkedHashMap<>();
    keys.findKeys("rate")
        .ifPresent(
            zones -> {
              if (zones.names().isEmpty()) {
                keys.fault("rate", "no rate is given", "a rate", "add one for each zone");
              }
              for (String zone : zones.names()) {
                zones.getRate(zone).ifPresent(rate -> rates.put(zone, rate));
              }
            });
    return rates;
  }
}
