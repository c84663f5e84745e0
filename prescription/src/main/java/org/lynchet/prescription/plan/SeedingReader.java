package org.lynchet.prescription.plan;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import org.lynchet.prescription.machine.Planter;
import org.lynchet.prescription.plan.PlanNode.Mapping;
import org.lynchet.prescription.quantity.SeedingRate;

/** Reads a product with its rate, and checks both against the rest of the plan. */
final class SeedingReader {
  private final boolean mayHaveZones;
  private final ProductCrops productCrops;
  private final StandReader stands;

  SeedingReader(boolean mayHaveZones, ProductCrops productCrops, StandReader stands) {
    this.mayHaveZones = mayHaveZones;
    this.productCrops = productCrops;
    this.stands = stands;
  }

  /**
   * Reads the keys {@code product} and {@code rate}.
   *
   * @param path the keys that lead to these two
   * @param crop the crop, if it could be read
   * @param planter the planter, if it could be read
   */
  Optional<Seeding> read(
      KeyReader keys, String path, Optional<String> crop, Optional<Planter> planter) {
    Optional<String> product = keys.get("product", NameText::product);
    if (product.isPresent() && crop.isPresent()) {
      productCrops.add(product.get(), crop.get(), keys.node("product"));
    }
    Optional<Map<String, SeedingRate>> byZone = Optional.empty();
    Optional<SeedingRate> everywhere = Optional.empty();
    if (keys.node("rate").orElse(null) instanceof Mapping) {
      byZone = keys.get("rate", byZone(product, planter));
    } else {
      everywhere = keys.get("rate", rate(product, planter));
    }
    return product.isPresent() && (everywhere.isPresent() || byZone.isPresent())
        ? Optional.of(
            new Seeding(
                product.get(),
                everywhere.orElse(null),
                byZone.orElse(new LinkedHashMap<>()),
                path + ".rate"))
        : Optional.empty();
  }

  private ValueReader<Map<String, SeedingRate>> byZone(
      Optional<String> product, Optional<Planter> planter) {
    ValueReader<Map<String, SeedingRate>> rates =
        KeyReader.names(NameText::name, zone -> rate(product, planter));
    return (node, faults) -> {
      if (!mayHaveZones) {
        faults.add(
            node.place(),
            "rates by management zone, but the field has no management-zones",
            "one rate, or field.management-zones with file and attribute",
            "write one rate, or add the map of the zones");
      }
      return rates.read(node, faults);
    };
  }

  private ValueReader<SeedingRate> rate(Optional<String> product, Optional<Planter> planter) {
    return (node, faults) -> {
      Optional<SeedingRate> rate = stands.of(product).read(node, faults);
      if (rate.isPresent() && planter.isPresent()) {
        RateLimitCheck.check(rate.get(), node, planter.get(), faults);
      }
      return rate;
    };
  }
}
