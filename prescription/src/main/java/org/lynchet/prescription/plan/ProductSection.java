package org.lynchet.prescription.plan;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.lynchet.prescription.defaults.Defaults;

/** Reads the section {@code products}. */
final class ProductSection {
  private static final double RESERVE = Defaults.get().number("products.reserve");

  private record Named(String product, String crop, Optional<PlanNode> node) {}

  private final List<Named> named = new ArrayList<>();

  Map<String, Product> read(KeyReader plan) {
    return plan.find(
            "products",
            KeyReader.names(NameText::product, name -> KeyReader.keys(keys -> product(name, keys))))
        .orElse(new LinkedHashMap<>());
  }

  private Optional<Product> product(String name, KeyReader keys) {
    Optional<String> crop = keys.get("crop", NameText::crop);
    crop.ifPresent(c -> named.add(new Named(name, c, keys.node("crop"))));
    Optional<Integer> perUnit = keys.find("seeds-per-unit", NumberText.count(1, 1_000_000_000));
    Optional<Double> germination =
        aboveNothing(
            "germination", "a germination of 0 % grows nothing", "the seed tag says", keys);
    Optional<Double> survival =
        aboveNothing(
            "field-survival",
            "of a field survival of 0 % nothing stands",
            "stood in other years",
            keys);
    double reserve = keys.find("reserve", QuantityText.SHARE).orElse(RESERVE);
    boolean whole =
        germination.isPresent() == keys.has("germination")
            && survival.isPresent() == keys.has("field-survival");
    return crop.filter(known -> whole)
        .map(
            c ->
                new Product(
                    name,
                    c,
                    perUnit.orElse(null),
                    germination.orElse(null),
                    survival.orElse(null),
                    reserve));
  }

  private static Optional<Double> aboveNothing(
      String key, String what, String source, KeyReader keys) {
    Optional<Double> share = keys.find(key, QuantityText.SHARE);
    if (share.isPresent() && share.get() == 0) {
      keys.fault(key, what, "above 0 %, at most 100 %", "write what " + source);
      return Optional.empty();
    }
    return share;
  }

  /** Checks that the products are of the crops as which the plan uses them. */
  void check(ProductCrops uses) {
    named.forEach(one -> uses.add(one.product(), one.crop(), one.node()));
  }
}
