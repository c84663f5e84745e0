package org.lynchet.prescription.plan;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import org.lynchet.prescription.defaults.Defaults;

/** Reads the section {@code products}. */
final class ProductSection {
  private static final double RESERVE = Defaults.get().number("products.reserve");

  private final ProductCrops productCrops;

  ProductSection(ProductCrops productCrops) {
    this.productCrops = productCrops;
  }

  Map<String, Product> read(KeyReader plan) {
    return plan.find(
            "products",
            KeyReader.names(NameText::product, name -> KeyReader.keys(keys -> product(name, keys))))
        .orElse(new LinkedHashMap<>());
  }

  private Optional<Product> product(String name, KeyReader keys) {
    Optional<String> crop = keys.get("crop", NameText::crop);
    crop.ifPresent(c -> productCrops.add(name, c, keys.node("crop")));
    Optional<Integer> perUnit = keys.find("seeds-per-unit", NumberText.count(1, 1_000_000_000));
    Optional<Double> germination = keys.find("germination", QuantityText.SHARE);
    if (germination.isPresent() && germination.get() == 0) {
      keys.fault(
          "germination",
          "a germination of 0 % grows nothing",
          "above 0 %, at most 100 %",
          "write what the seed tag says");
    }
    double reserve = keys.find("reserve", QuantityText.SHARE).orElse(RESERVE);
    return crop.map(
        c -> new Product(name, c, perUnit.orElse(null), germination.orElse(null), reserve));
  }
}
