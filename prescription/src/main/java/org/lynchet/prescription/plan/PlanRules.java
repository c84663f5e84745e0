package org.lynchet.prescription.plan;

import java.math.BigDecimal;
import java.util.HashMap;
import java.util.Map;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import org.lynchet.prescription.machine.Machine;
import org.lynchet.prescription.machine.Planter;
import org.lynchet.prescription.machine.Planter.Hoppers;
import org.lynchet.prescription.machine.Planter.RateLimits;
import org.lynchet.prescription.plan.PlannedStrip.Border;
import org.lynchet.prescription.quantity.SeedingRate;

/** Checks what sections of a plan say of each other. */
final class PlanRules {
  private final Plan plan;
  private final PlanPlaces places;
  private final Map<String, String> cropOfProduct = new HashMap<>();

  PlanRules(Plan plan, PlanPlaces places) {
    this.plan = plan;
    this.places = places;
  }

  /** Adds a fault for each rule that is broken. */
  void check() {
    PlannedHeadland headland = plan.headland();
    if (headland != null) {
      Planter planter = planter(headland.plantedBy(), "headland.planted-by");
      checkSeeding(headland.seeding(), headland.crop(), planter, "headland");
    }
    for (int i = 0; i < plan.strips().size(); i++) {
      checkStrip(plan.strips().get(i), "strips[" + i + "]");
    }
    plan.products()
        .forEach(
            (name, product) -> {
              String crop = cropOfProduct.getOrDefault(name, product.crop());
              if (!crop.equals(product.crop())) {
                places.fault(
                    "products." + name + ".crop",
                    "product '"
                        + name
                        + "' is "
                        + product.crop()
                        + " here, "
                        + crop
                        + " in the strips",
                    "one crop for a product",
                    "correct one of them");
              }
            });
  }

  private void checkStrip(PlannedStrip strip, String key) {
    Planter planter = planter(strip.plantedBy(), key + ".planted-by");
    checkSeeding(strip.centre(), strip.crop(), planter, key + ".centre");
    Border border = strip.border();
    if (border == null) {
      return;
    }
    checkSeeding(border.seeding(), strip.crop(), planter, key + ".border");
    if (planter == null) {
      return;
    }
    int rows = planter.rows() * strip.passes();
    if (border.rows() * 2 > rows) {
      places.fault(
          key + ".border.rows",
          border.rows() + " border rows are more than half of the strip's " + rows + " rows",
          "at most " + rows / 2 + " rows",
          "fewer border rows, or more passes");
    }
    boolean otherProduct = !border.seeding().product().equals(strip.centre().product());
    if (planter.hoppers() == Hoppers.CENTRAL
        && otherProduct
        && border.rows() % planter.rows() != 0) {
      places.fault(
          key + ".border.product",
          "planter '"
              + planter.name()
              + "' has one central hopper and cannot plant another product"
              + " in some of its rows",
          "the centre's product, or a border of whole passes of " + planter.rows() + " rows",
          "plant one product across the pass; the rate may differ");
    }
  }

  private @Nullable Planter planter(String name, String key) {
    Machine machine = plan.machines().get(name);
    if (machine instanceof Planter planter) {
      return planter;
    }
    String planters =
        plan.machines().values().stream()
            .filter(Planter.class::isInstance)
            .map(Machine::name)
            .collect(Collectors.joining(", "));
    places.fault(
        key,
        machine == null
            ? "no machine is called '" + name + "'" + NearName.hint(plan.machines().keySet(), name)
            : "machine '" + name + "' is not a planter",
        planters.isEmpty() ? "a machine of kind planter" : "a planter: " + planters,
        "name a planter of the section machines");
    return null;
  }

  private void checkSeeding(Seeding seeding, String crop, @Nullable Planter planter, String key) {
    String before = cropOfProduct.putIfAbsent(seeding.product(), crop);
    if (before != null && !before.equals(crop)) {
      places.fault(
          key + ".product",
          "product '" + seeding.product() + "' is planted as " + before + " and as " + crop,
          "one crop for a product",
          "correct one of them");
    }
    if (!seeding.byManagementZone().isEmpty() && plan.field().managementZones() == null) {
      places.fault(
          key + ".rate",
          "rates go by management zone ("
              + String.join(", ", new TreeSet<>(seeding.byManagementZone().keySet()))
              + "), but the field has none",
          "one rate, or field.management-zones",
          "add field.management-zones with file and attribute");
    }
    SeedingRate everywhere = seeding.everywhere();
    RateLimits limits = planter == null ? null : planter.rateLimits();
    if (planter != null && limits != null) {
      if (everywhere != null) {
        checkLimits(everywhere, planter, limits, key + ".rate");
      }
      seeding
          .byManagementZone()
          .forEach((zone, rate) -> checkLimits(rate, planter, limits, key + ".rate." + zone));
    }
  }

  private void checkLimits(SeedingRate rate, Planter planter, RateLimits limits, String key) {
    double seeds = rate.perSquareMetre();
    if (seeds > 0
        && (seeds < limits.min().perSquareMetre() || seeds > limits.max().perSquareMetre())) {
      places.fault(
          key,
          number(rate) + " is outside what planter '" + planter.name() + "' can set",
          "0, or " + number(limits.min()) + " to " + number(limits.max()),
          "change the rate, or the planter's rate-limits");
    }
  }

  private static String number(SeedingRate rate) {
    return new BigDecimal(Double.toString(rate.seeds())).stripTrailingZeros().toPlainString()
        + " "
        + rate.unit();
  }
}
