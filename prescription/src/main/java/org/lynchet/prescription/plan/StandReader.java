package org.lynchet.prescription.plan;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Map;
import java.util.Optional;
import org.lynchet.prescription.quantity.AreaUnit;
import org.lynchet.prescription.quantity.SeedingRate;

/**
 * Reads seeding rates; where a rate is a wanted stand, it becomes the seeds that give it, stand /
 * (germination x field survival), to a whole seed on an acre or hectare.
 */
final class StandReader {
  private static final int DECIMALS_ON_A_SQUARE_METRE = 4;

  private final Map<String, Product> products;
  private final Optional<PlanNode> written;

  /**
   * A reader.
   *
   * @param products the products that could be read
   * @param written the plan's section of them, if it has one
   */
  StandReader(Map<String, Product> products, Optional<PlanNode> written) {
    this.products = products;
    this.written = written;
  }

  /** A reader of the rates of a product; of none if it could not be read. */
  ValueReader<SeedingRate> of(Optional<String> product) {
    return (node, faults) ->
        QuantityText.PLANTING_RATE
            .read(node, faults)
            .flatMap(rate -> rate.isStand() ? seeds(rate, product, node, faults) : seeds(rate));
  }

  private static Optional<SeedingRate> seeds(PlantingRate rate) {
    return Optional.of(new SeedingRate(rate.amount(), rate.per()));
  }

  private Optional<SeedingRate> seeds(
      PlantingRate stand, Optional<String> product, PlanNode node, PlanFaults faults) {
    if (product.isEmpty() || couldNotBeRead(product.get())) {
      return Optional.empty();
    }
    Optional<Double> share =
        Optional.ofNullable(products.get(product.get())).flatMap(Product::standingShare);
    if (share.isEmpty()) {
      faults.add(
          node.place(),
          node.kind()
              + " is a wanted stand, and how many seeds of "
              + Shown.quoted(product.get())
              + " stand is not known",
          "seeds, such as 34000 seeds/ac; or plants, with germination and field-survival of the"
              + " product",
          "add both to products." + product.get() + ", or write the rate in seeds");
      return Optional.empty();
    }
    BigDecimal seeds =
        BigDecimal.valueOf(stand.amount() / share.get())
            .setScale(
                stand.per() == AreaUnit.SQUARE_METRE ? DECIMALS_ON_A_SQUARE_METRE : 0,
                RoundingMode.HALF_UP);
    SeedingRate rate = new SeedingRate(seeds.doubleValue(), stand.per());
    if (rate.perSquareMetre() > SeedingRate.MOST_PER_SQUARE_METRE) {
      faults.add(
          node.place(),
          node.kind() + " is out of range: it takes more seeds than can be planted",
          SeedingRate.ALLOWED,
          "correct the number, germination or field-survival");
      return Optional.empty();
    }
    return Optional.of(rate);
  }

  /** Whether the plan has the product, but with faults, which are told there. */
  private boolean couldNotBeRead(String product) {
    return !products.containsKey(product)
        && written.orElse(null) instanceof PlanNode.Mapping section
        && section.entries().containsKey(product);
  }
}
