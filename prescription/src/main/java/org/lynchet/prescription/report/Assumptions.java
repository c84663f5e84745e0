package org.lynchet.prescription.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.jspecify.annotations.Nullable;
import org.lynchet.prescription.defaults.Defaults;
import org.lynchet.prescription.defaults.Defaults.Sourced;
import org.lynchet.prescription.machine.Combine;
import org.lynchet.prescription.machine.Handling;
import org.lynchet.prescription.machine.Machine;
import org.lynchet.prescription.machine.Planter;
import org.lynchet.prescription.machine.Sprayer;
import org.lynchet.prescription.plan.ExtraCost;
import org.lynchet.prescription.plan.ForecastChoices;
import org.lynchet.prescription.plan.GrainDelivered;
import org.lynchet.prescription.plan.Plan;
import org.lynchet.prescription.plan.PlannedBudget;
import org.lynchet.prescription.plan.PlannedStrip;
import org.lynchet.prescription.plan.Product;
import org.lynchet.prescription.quantity.AreaUnit;
import org.lynchet.prescription.quantity.Spread;

/** Lists what a comparison of a plan goes by: season, responses, canopies, machines, money. */
final class Assumptions {
  private static final String ANY_HANDLING =
      "the plan, else common practice, no source (ASAE D497 from memory)";

  private static final String ANY_MOISTURE =
      "the plan; moisture sold, if not told: U. Wisconsin, Rankin, Harvest Time Math 101";

  private final Plan plan;
  private final Defaults defaults = Defaults.get();
  private final List<Assumption> all = new ArrayList<>();

  private Assumptions(Plan plan) {
    this.plan = plan;
  }

  static List<Assumption> of(Plan plan) {
    Assumptions assumptions = new Assumptions(plan);
    assumptions.addSeason();
    assumptions.addResponses();
    assumptions.all.addAll(CanopyAssumptions.of(plan, assumptions.defaults));
    plan.machines().values().forEach(assumptions::addMachine);
    plan.products().values().forEach(assumptions::addStand);
    assumptions.addMoney();
    return assumptions.all;
  }

  private void addSeason() {
    ForecastChoices forecast = plan.forecast();
    String season = forecast.season().name().toLowerCase(Locale.ROOT);
    addDefaults("season." + season, "gain kept in a " + season + " season", "forecast.season");
    if (forecast.clearness().isEmpty()) {
      addDefaults("clearness", "clearness, January to December", "forecast.clearness");
    } else {
      all.add(
          Assumption.ofPlan(
              "clearness, January to December",
              plain(forecast.clearness().toString()),
              "forecast.clearness"));
    }
  }

  private void addResponses() {
    for (String crop : plan.strips().stream().map(PlannedStrip::crop).distinct().toList()) {
      String what = crop + ", yield for light";
      String key = "forecast.response." + crop;
      Spread own = plan.forecast().responses().get(crop);
      if (own == null) {
        addDefaults("response." + defaults.nameOf(crop), what, key);
      } else {
        all.add(Assumption.ofPlan(what + ", low / typical / high", NumberWords.spread(own), key));
      }
    }
  }

  /** A default, or those below its key; neighbours with the same source stand together. */
  private void addDefaults(String folder, String what, String change) {
    String names = "";
    String values = "";
    String source = "";
    for (Sourced value : defaults.all()) {
      boolean below = value.key().startsWith(folder + ".");
      if (!below && !value.key().equals(folder)) {
        continue;
      }
      if (!values.isEmpty() && !source.equals(value.source())) {
        all.add(new Assumption(what + names, values, source, change));
        names = "";
        values = "";
      }
      String name = below ? value.key().substring(folder.length() + 1) : "";
      names = names + (names.isEmpty() ? (below ? ", " : "") : " / ") + name;
      values = values + (values.isEmpty() ? "" : " / ") + plain(value.value());
      source = value.source();
    }
    all.add(new Assumption(what + names, values, source, change));
  }

  /** A list without its brackets. */
  private static String plain(String value) {
    return value.replaceAll("[\\[\\]]", "").replaceAll(",\\s*", ", ");
  }

  private void addMachine(Machine machine) {
    if (machine instanceof Planter planter) {
      addHandling(machine.name(), planter.handling());
    } else if (machine instanceof Sprayer sprayer) {
      addHandling(machine.name(), sprayer.handling());
    } else if (machine instanceof Combine combine) {
      addHandling(machine.name(), combine.handling());
    }
  }

  private void addHandling(String name, Handling handling) {
    all.add(
        new Assumption(
            name + ", speed, turn time and radius",
            String.format(
                Locale.ROOT,
                "%s %s, %s %s, %s %s",
                NumberWords.plain(handling.speed().amount()),
                handling.speed().unit().symbol(),
                NumberWords.plain(handling.turnTime().amount()),
                handling.turnTime().unit().symbol(),
                NumberWords.plain(handling.turnRadius().amount()),
                handling.turnRadius().unit().symbol()),
            ANY_HANDLING,
            "machines." + name + ".speed, turn-time, turn-radius"));
  }

  private void addStand(Product product) {
    product
        .standingShare()
        .ifPresent(
            share ->
                all.add(
                    Assumption.ofPlan(
                        product.name() + ", seeds whose plants stand, %",
                        String.format(Locale.ROOT, "%.1f", 100 * share),
                        "products." + product.name() + ".germination, field-survival")));
  }

  private void addDelivered(String crop, @Nullable GrainDelivered grain, String key) {
    if (grain != null) {
      all.add(
          new Assumption(
              crop + ", moisture delivered / sold, handling loss, %",
              String.format(
                  Locale.ROOT,
                  "%.1f / %.1f, %.2f",
                  100 * grain.shrink().moisture(),
                  100 * grain.shrink().standard(),
                  100 * grain.shrink().handlingLoss()),
              ANY_MOISTURE,
              key + ".moisture, standard-moisture, handling-loss"));
    }
  }

  private void addMoney() {
    PlannedBudget budget = plan.budget();
    String currency = budget.currency();
    budget
        .crops()
        .forEach(
            (crop, market) -> {
              String key = "budget.crops." + crop;
              all.add(
                  Assumption.ofPlan(
                      crop + ", price",
                      NumberWords.spread(market.price())
                          + " "
                          + currency
                          + "/"
                          + market.unit().symbol(),
                      key + ".price"));
              all.add(
                  Assumption.ofPlan(
                      crop + ", yield in blocks",
                      NumberWords.spread(market.yieldInBlocks())
                          + " "
                          + market.unit().yieldSymbol(),
                      key + ".yield"));
              addDelivered(crop, market.delivered(), key);
            });
    budget
        .seedPrices()
        .forEach(
            (product, price) ->
                all.add(
                    Assumption.ofPlan(
                        product + ", seed",
                        NumberWords.plain(price) + " " + currency + "/unit",
                        "budget.seed." + product)));
    if (!budget.crops().isEmpty()) {
      all.add(
          Assumption.ofPlan(
              "sprayings in a season", Integer.toString(budget.sprayings()), "budget.sprayings"));
    }
    for (ExtraCost extra : budget.extraCosts()) {
      AreaUnit per = extra.per();
      all.add(
          Assumption.ofPlan(
              extra.item(),
              NumberWords.plain(extra.amount())
                  + " "
                  + currency
                  + "/"
                  + (per == null ? "field" : per.symbol()),
              "budget.extra-costs"));
    }
    Spread hour = budget.machineCost();
    if (hour != null) {
      all.add(
          Assumption.ofPlan(
              "cost of an hour", NumberWords.spread(hour) + " " + currency, "budget.machine-cost"));
    }
  }
}
