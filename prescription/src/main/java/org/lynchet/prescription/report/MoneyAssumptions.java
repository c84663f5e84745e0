package org.lynchet.prescription.report;

import java.util.ArrayList;
import java.util.List;
import org.lynchet.prescription.defaults.Defaults;
import org.lynchet.prescription.plan.CropMarket;
import org.lynchet.prescription.plan.ExtraCost;
import org.lynchet.prescription.plan.Plan;
import org.lynchet.prescription.plan.PlannedBudget;
import org.lynchet.prescription.quantity.AreaUnit;
import org.lynchet.prescription.quantity.Spread;

/** Lists prices, yields and costs. */
final class MoneyAssumptions {
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
    String grown = NumberWords.spread(market.yieldInBlocks()) + " " + market.unit().yieldSymbol();
    all.add(Assumption.ofPlan(crop + ", price", price, key + ".price"));
    all.add(Assumption.ofPlan(crop + ", yield in blocks", grown, key + ".yield"));
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
