package org.lynchet.prescription.plan;

import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.lynchet.prescription.plan.PlacementChoices.Kind;
import org.lynchet.prescription.plan.PlanNode.Listing;
import org.lynchet.prescription.plan.PlanNode.Mapping;

/** Reads the keys of the section {@code guidance} that say where the pattern goes. */
final class PlacementSection {
  private static final String SHARES = "wanted-shares";

  /**
   * How far shares may be from 100 % together: those of thirds are written with a decimal or two.
   */
  private static final double SUM_TOLERANCE = 0.0011;

  private static final int MOST_FACTOR = 1000;
  private static final ValueReader<Double> FACTOR = NumberText.between(0, MOST_FACTOR);

  private PlacementSection() {}

  static PlacementChoices read(KeyReader guidance) {
    PlacementChoices other = PlacementChoices.FIXED;
    return new PlacementChoices(
        guidance.find("placement", WordText.oneOf(Kind.class)).orElse(other.kind()),
        guidance.find("headings", HeadingList::read).orElse(other.headingsDegrees()),
        guidance.find("weights", KeyReader.keys(PlacementSection::weights)).orElse(other.weights()),
        guidance
            .find(SHARES, KeyReader.names(NameText::crop, crop -> QuantityText.SHARE))
            .flatMap(shares -> whole(shares, guidance))
            .orElse(other.wantedShares()));
  }

  private static Optional<PlacementWeights> weights(KeyReader keys) {
    PlacementWeights other = PlacementWeights.DEFAULT;
    return Optional.of(
        new PlacementWeights(
            keys.find("partial-pass", FACTOR).orElse(other.partialPass()),
            keys.find("point-rows", FACTOR).orElse(other.pointRows()),
            keys.find("headland", FACTOR).orElse(other.headland()),
            keys.find("crop-shares", FACTOR).orElse(other.cropShares()),
            keys.find("piece", QuantityText.AREA).orElse(other.piece()),
            keys.find("turn", QuantityText.AREA).orElse(other.turn())));
  }

  private static Optional<Map<String, Double>> whole(Map<String, Double> shares, KeyReader keys) {
    boolean anyFaulty =
        keys.node(SHARES).orElse(null) instanceof Mapping written
            && written.entries().size() > shares.size();
    double sum = shares.values().stream().mapToDouble(Double::doubleValue).sum();
    if (anyFaulty || Math.abs(sum - 1) <= SUM_TOLERANCE) {
      return Optional.of(shares);
    }
    keys.fault(
        SHARES,
        "the wanted shares are " + Math.rint(sum * 10_000) / 100 + " % together",
        "shares of all crops of the strips, 100 % together",
        "correct one of them");
    return Optional.empty();
  }

  /**
   * Adds a fault for each wanted share of a crop without strips, and for each crop without a share;
   * judges nothing if a strip could not be read.
   */
  static void checkCrops(KeyReader plan, List<PlannedStrip> strips, PlanFaults faults) {
    if (!(plan.node("strips").orElse(null) instanceof Listing all)
        || all.items().size() > strips.size()
        || !(plan.node("guidance").orElse(null) instanceof Mapping guidance)
        || !guidance.entries().containsKey(SHARES)
        || !(guidance.entries().get(SHARES).value() instanceof Mapping shares)) {
      return;
    }
    Set<String> crops = new LinkedHashSet<>();
    strips.forEach(strip -> crops.add(strip.crop()));
    String allowed = "the crops of the strips: " + String.join(", ", crops);
    shares
        .entries()
        .forEach(
            (crop, entry) -> {
              if (!crops.contains(crop)) {
                faults.add(
                    entry.keyPlace(),
                    "no strip is of " + Shown.quoted(crop) + NearName.hint(crops, crop),
                    allowed,
                    "correct or remove it");
              }
            });
    for (String crop : crops) {
      if (!shares.entries().containsKey(crop)) {
        faults.add(
            shares.place(), crop + " has no wanted share", allowed, "add its share, or remove all");
      }
    }
  }
}
