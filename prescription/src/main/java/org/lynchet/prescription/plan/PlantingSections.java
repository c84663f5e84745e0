package org.lynchet.prescription.plan;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.lynchet.prescription.plan.HandoffChoices.Format;
import org.lynchet.prescription.plan.PlannedStrip.Border;
import org.lynchet.prescription.plan.PlannedStrip.Sides;

/**
 * Reads the sections {@code headland}, {@code strips}, {@code products}, {@code handoff} and {@code
 * fit}.
 */
final class PlantingSections {
  private PlantingSections() {}

  static Optional<PlannedHeadland> headland(KeyReader plan) {
    return plan.findKeys("headland").flatMap(PlantingSections::readHeadland);
  }

  private static Optional<PlannedHeadland> readHeadland(KeyReader keys) {
    Optional<Integer> passes = keys.getCount("passes", 1);
    Optional<String> planter = keys.getText("planted-by");
    Optional<String> crop = SeedingKeys.crop(keys);
    Optional<Seeding> seeding = SeedingKeys.seeding(keys);
    boolean aroundHoles = keys.findFlag("around-holes").orElse(true);
    keys.close();
    return passes.isPresent() && planter.isPresent() && crop.isPresent() && seeding.isPresent()
        ? Optional.of(
            new PlannedHeadland(
                passes.get(), planter.get(), aroundHoles, crop.get(), seeding.get()))
        : Optional.empty();
  }

  static List<PlannedStrip> strips(KeyReader plan) {
    List<PlannedStrip> strips = new ArrayList<>();
    for (KeyReader keys : plan.getList("strips")) {
      Optional<String> crop = SeedingKeys.crop(keys);
      Optional<String> planter = keys.getText("planted-by");
      Optional<Integer> passes = keys.getCount("passes", 1);
      Optional<Seeding> centre = keys.getKeys("centre").flatMap(PlantingSections::closedSeeding);
      Optional<Border> border = keys.findKeys("border").flatMap(PlantingSections::border);
      keys.close();
      if (crop.isPresent() && planter.isPresent() && passes.isPresent() && centre.isPresent()) {
        strips.add(
            new PlannedStrip(
                crop.get(), planter.get(), passes.get(), centre.get(), border.orElse(null)));
      }
    }
    return strips;
  }

  private static Optional<Seeding> closedSeeding(KeyReader keys) {
    Optional<Seeding> seeding = SeedingKeys.seeding(keys);
    keys.close();
    return seeding;
  }

  private static Optional<Border> border(KeyReader keys) {
    Optional<Integer> rows = keys.getCount("rows", 1);
    Sides sides = keys.findWord("sides", Sides.class).orElse(Sides.BOTH);
    Optional<Seeding> seeding = SeedingKeys.seeding(keys);
    keys.close();
    return rows.isPresent() && seeding.isPresent()
        ? Optional.of(new Border(rows.get(), sides, seeding.get()))
        : Optional.empty();
  }

  static Map<String, Product> products(KeyReader plan) {
    return plan.findNamed("products", PlantingSections::product);
  }

  private static Optional<Product> product(String name, KeyReader keys) {
    Optional<String> crop = SeedingKeys.crop(keys);
    Optional<Integer> perUnit = keys.findCount("seeds-per-unit", 1);
    Optional<Double> germination = keys.findPercent("germination");
    if (germination.isPresent() && (germination.get() == 0 || germination.get() > 1)) {
      keys.fault(
          "germination",
          "germination out of range",
          "above 0 %, at most 100 %",
          "see the seed tag");
    }
    double reserve = keys.findPercent("reserve").orElse(0.0);
    keys.close();
    return crop.map(
        c -> new Product(name, c, perUnit.orElse(null), germination.orElse(null), reserve));
  }

  static HandoffChoices handoff(KeyReader plan) {
    HandoffChoices all = new HandoffChoices(false, List.of(Format.values()));
    return plan.findKeys("handoff")
        .map(
            keys -> {
              boolean offZones = keys.findFlag("off-zones").orElse(false);
              List<Format> formats = formats(keys).orElse(all.formats());
              keys.close();
              return new HandoffChoices(offZones, formats);
            })
        .orElse(all);
  }

  static FitChoices fit(KeyReader plan) {
    return plan.findKeys("fit")
        .map(
            keys -> {
              FitChoices fit =
                  new FitChoices(
                      keys.findLength("max-strip-width").orElse(FitChoices.DEFAULT.maxStripWidth()),
                      keys.findLength("tolerance").orElse(FitChoices.DEFAULT.tolerance()));
              keys.close();
              return fit;
            })
        .orElse(FitChoices.DEFAULT);
  }

  private static Optional<List<Format>> formats(KeyReader keys) {
    Optional<PlanNode> node = keys.find("formats");
    if (node.isEmpty()) {
      return Optional.empty();
    }
    List<Format> formats = new ArrayList<>();
    if (node.get() instanceof PlanNode.Listing list && !list.items().isEmpty()) {
      for (PlanNode item : list.items()) {
        keys.word(item, keys.pathOf("formats"), Format.class)
            .filter(format -> !formats.contains(format))
            .ifPresent(formats::add);
      }
    } else {
      keys.fault(
          "formats",
          node.get().kind() + " is not a list",
          "[shapefile, geojson]",
          "list at least one");
    }
    return Optional.of(formats);
  }
}
