package org.lynchet.prescription.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.lynchet.prescription.defaults.Defaults;
import org.lynchet.prescription.defaults.Defaults.Sourced;
import org.lynchet.prescription.light.CanopyRow;
import org.lynchet.prescription.light.LightRequest;
import org.lynchet.prescription.plan.ForecastChoices.PlannedCanopy;
import org.lynchet.prescription.plan.Plan;
import org.lynchet.prescription.plan.PlannedStrip;
import org.lynchet.prescription.quantity.Length;
import org.lynchet.prescription.quantity.LengthUnit;

/** Lists how canopies grow: of each crop by the plan or by default, and of products by the plan. */
final class CanopyAssumptions {
  private static final String HEIGHT = "height-metres";
  private static final String PLANTING = "planting";

  /** The keys of a plan's canopy in the order of the list. */
  private static final List<String> KEYS =
      List.of(
          "height",
          "leaf-area-index",
          "extinction",
          "planting",
          "maturity",
          "half-leaf",
          "full-leaf",
          "decline-from",
          "leaf-at-maturity");

  /** Only tried by the command light. */
  private static final String SHORT = "short-stature-height-metres";

  private final Plan plan;
  private final LightRequest light;
  private final Defaults defaults = Defaults.get();
  private final List<Assumption> all = new ArrayList<>();

  private CanopyAssumptions(Plan plan, LightRequest light) {
    this.plan = plan;
    this.light = light;
  }

  /**
   * The assumptions.
   *
   * @param light as it was asked for: its canopies have the days of planting that were used
   */
  static List<Assumption> of(Plan plan, LightRequest light) {
    CanopyAssumptions canopies = new CanopyAssumptions(plan, light);
    List<String> crops = plan.strips().stream().map(PlannedStrip::crop).distinct().toList();
    crops.forEach(canopies::addCrop);
    plan.forecast()
        .canopies()
        .forEach(
            (name, canopy) -> {
              if (!crops.contains(name)) {
                canopies.addPlanned(name, canopy);
              }
            });
    return canopies.all;
  }

  private void addCrop(String crop) {
    String folder = "canopies." + defaults.nameOf(crop) + ".";
    PlannedCanopy own = plan.forecast().canopies().get(crop);
    if (own != null) {
      addPlanned(crop, own);
    }
    if (!defaults.crops().contains(defaults.nameOf(crop))) {
      all.add(
          new Assumption(
              crop + ", growth and decline of leaves",
              "by the same shares of the season as soybean",
              "a choice, no source",
              Assumption.FIXED));
    }
    for (Sourced value : defaults.all()) {
      if (value.key().startsWith(folder) && !value.key().endsWith(SHORT)) {
        addDefault(crop, value, value.key().substring(folder.length()), own);
      }
    }
  }

  private void addDefault(String crop, Sourced value, String name, @Nullable PlannedCanopy own) {
    String key = replacing(name);
    if (own != null && key != null && planned(own, key).isPresent()) {
      return;
    }
    String change = key == null ? Assumption.FIXED : key(crop, key);
    boolean planting = name.equals(PLANTING);
    all.add(
        new Assumption(
            crop + ", " + name.replace("-metres", "").replace('-', ' '),
            planting ? usualPlanting(crop).orElse(value.value()) : shown(name, value.value()),
            planting ? SeasonAssumptions.inPlace(value.source(), light) : value.source(),
            change));
  }

  /** The key of the plan that replaces a default, by the last name of its key; null for none. */
  private static @Nullable String replacing(String name) {
    return switch (name) {
      case HEIGHT -> "height";
      case "days-to-maturity" -> "maturity";
      default -> KEYS.contains(name) ? name : null;
    };
  }

  private String shown(String name, String value) {
    return name.equals(HEIGHT)
        ? plan.shownUnits().written(new Length(Double.parseDouble(value), LengthUnit.METRE))
        : value;
  }

  /** The day that the default came to, on this side of the equator. */
  private Optional<String> usualPlanting(String crop) {
    return light.rows().stream()
        .filter(row -> row.crop().equals(crop) && !isPlantingPlanned(row.product()))
        .map(CanopyRow::canopy)
        .flatMap(Stream::ofNullable)
        .map(canopy -> canopy.planting().toString())
        .findFirst();
  }

  private boolean isPlantingPlanned(String product) {
    PlannedCanopy own = plan.forecast().canopies().get(product);
    return own != null && own.planting() != null;
  }

  private void addPlanned(String name, PlannedCanopy canopy) {
    for (String key : KEYS) {
      planned(canopy, key)
          .ifPresent(
              value ->
                  all.add(
                      Assumption.ofPlan(
                          name + ", " + key.replace('-', ' '), value, key(name, key))));
    }
  }

  private static String key(String name, String key) {
    return "forecast.canopies." + name + "." + key;
  }

  private static Optional<String> planned(PlannedCanopy canopy, String key) {
    Object value =
        switch (key) {
          case "height" -> text(canopy.height());
          case "leaf-area-index" -> canopy.leafAreaIndex();
          case "extinction" -> canopy.extinction();
          case "planting" -> canopy.planting();
          case "maturity" -> canopy.maturity();
          case "half-leaf" -> canopy.leaf().half();
          case "full-leaf" -> canopy.leaf().full();
          case "decline-from" -> canopy.leaf().declineFrom();
          default -> canopy.leaf().leftAtMaturity();
        };
    return Optional.ofNullable(value).map(Object::toString);
  }

  private static @Nullable String text(@Nullable Length length) {
    return length == null
        ? null
        : NumberWords.plain(length.amount()) + " " + length.unit().symbol();
  }
}
