package org.lynchet.prescription.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.lynchet.prescription.defaults.Defaults;
import org.lynchet.prescription.plan.CropMarket;
import org.lynchet.prescription.plan.ExtraCost;
import org.lynchet.prescription.plan.GrainDelivered;
import org.lynchet.prescription.plan.Plan;
import org.lynchet.prescription.plan.PlannedBudget;
import org.lynchet.prescription.quantity.AreaUnit;
import org.lynchet.prescription.quantity.GrainUnit;
import org.lynchet.prescription.quantity.Shrink;
import org.lynchet.prescription.quantity.Spread;

/** Lists prices, yields and costs. */
final class MoneyAssumptions {
  private static final String MOISTURE =
      "the plan; moisture sold, if not told: U. Wisconsin, Rankin, Harvest Time Math 101";

  private final PlannedBudget budget;
  private final String currency;
  private final List<Assumption> all = new ArrayList<>();

  private MoneyAssumptions(PlannedBudget budget) {
    this.budget = budget;
    this.currency = budget.currency();
  }

  static List<Assumption> of(Plan plan) {
    MoneyAssumptions money = new MoneyAssumptions(plan.budget());
    money.budget.crops().forEach(money::addCrop);
    money.addSeed();
    money.addCosts();
    return money.all;
  }

  private void addCrop(String crop, CropMarket market) {
    String key = "budget.crops." + crop;
    String price =
        NumberWords.spread(market.price()) + " " + currency + "/" + market.unit().symbol();
    all.add(Assumption.ofPlan(crop + ", price", price, key + ".price"));
    GrainDelivered grain = market.delivered();
    if (grain == null) {
      addYield(crop, "", market.yieldInBlocks(), market.unit(), key);
    } else {
      addYield(crop, " as delivered", grain.yield(), grain.unit(), key);
      all.add(delivered(crop, grain.shrink(), key));
    }
  }

  private void addYield(String crop, String when, Spread grown, GrainUnit unit, String key) {
    all.add(
        Assumption.ofPlan(
            crop + ", yield in blocks" + when,
            NumberWords.spread(grown) + " " + unit.yieldSymbol(),
            key + ".yield"));
  }

  private static Assumption delivered(String crop, Shrink shrink, String key) {
    return new Assumption(
        crop + ", moisture delivered / sold, handling loss, %",
        String.format(
            Locale.ROOT,
            "%.1f / %.1f, %.2f",
            100 * shrink.moisture(),
            100 * shrink.standard(),
            100 * shrink.handlingLoss()),
        MOISTURE,
        key + ".moisture, standard-moisture, handling-loss");
  }

  private void addSeed() {
    budget
        .seedPrices()
        .forEach(
            (product, price) ->
                all.add(
                    Assumption.ofPlan(
                        product + ", seed",
                        NumberWords.plain(price) + " " + currency + "/unit",
                        "budget.seed." + product)));
  }

  private void addCosts() {
    if (!budget.crops().isEmpty()) {
      String times = Integer.toString(budget.sprayings());
      boolean told = budget.toldSprayings() != null;
      all.add(
          new Assumption(
              "sprayings of each crop in a season",
              times,
              told ? Assumption.PLAN : Defaults.get().source("budget.sprayings"),
              "budget.sprayings"));
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
