package org.lynchet.prescription.budget;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.lynchet.prescription.quantity.Spread;

/**
 * Lists the numbers of a budget that are not known for sure, and adds the budget up for any values
 * of them: each crop's change of yield, then its price, in the crops' order; the cost of an hour
 * last.
 */
final class BudgetInputs {

  /** One uncertain number. */
  record Input(String name, Spread spread) {}

  private final BudgetFacts facts;
  private final List<Input> inputs = new ArrayList<>();

  BudgetInputs(BudgetFacts facts) {
    this.facts = facts;
    for (CropChange crop : facts.crops()) {
      inputs.add(new Input("change of yield, " + crop.crop(), crop.yieldChange()));
      inputs.add(new Input("price, " + crop.crop(), crop.price()));
    }
    Spread hour = facts.machineCost();
    if (hour != null) {
      inputs.add(new Input("cost of an hour", hour));
    }
  }

  List<Input> inputs() {
    return inputs;
  }

  /** The typical value of each input. */
  double[] typical() {
    return inputs.stream().mapToDouble(input -> input.spread().typical()).toArray();
  }

  /** The budget at values of the inputs, one for each in their order. */
  PartialBudget budget(double[] values) {
    List<BudgetLine> addedReturns = new ArrayList<>();
    List<BudgetLine> reducedReturns = new ArrayList<>();
    List<BudgetLine> reducedCosts = new ArrayList<>();
    List<BudgetLine> addedCosts = new ArrayList<>(facts.extraCosts());
    int at = 0;
    for (CropChange crop : facts.crops()) {
      double grain = crop.grainInBlocks() * values[at++];
      put(crop.crop() + ", change of yield", grain * values[at++], addedReturns, reducedReturns);
    }
    put("seed", facts.moreSeed(), addedCosts, reducedCosts);
    if (facts.machineCost() != null) {
      put("time in the field", facts.moreHours() * values[at], addedCosts, reducedCosts);
    }
    return new PartialBudget(addedReturns, reducedCosts, reducedReturns, addedCosts);
  }

  private static void put(
      String item, double amount, List<BudgetLine> ifMore, List<BudgetLine> ifLess) {
    if (amount != 0) {
      (amount > 0 ? ifMore : ifLess).add(BudgetLine.of(item, Math.abs(amount)));
    }
  }

  /** The change of net at values of the inputs, not rounded; linear in each of them. */
  double net(double[] values) {
    double net = -facts.moreSeed();
    int at = 0;
    for (CropChange crop : facts.crops()) {
      net += crop.grainInBlocks() * values[at++] * values[at++];
    }
    if (facts.machineCost() != null) {
      net -= facts.moreHours() * values[at];
    }
    for (BudgetLine extra : facts.extraCosts()) {
      net -= extra.amount().doubleValue();
    }
    return net;
  }

  /**
   * The change of net: typical, and the least and the most within the spreads. Net is linear in
   * each input and a crop's inputs meet no other's, so each crop is at one of its four corners.
   */
  Spread netSpread() {
    double fixed = net(new double[inputs.size()]);
    double least = fixed;
    double most = fixed;
    for (CropChange crop : facts.crops()) {
      Spread change = crop.yieldChange();
      Spread price = crop.price();
      double[] corners = {
        change.low() * price.low(),
        change.low() * price.high(),
        change.high() * price.low(),
        change.high() * price.high()
      };
      Arrays.sort(corners);
      least += crop.grainInBlocks() * corners[0];
      most += crop.grainInBlocks() * corners[3];
    }
    Spread hour = facts.machineCost();
    if (hour != null) {
      double hours = facts.moreHours();
      least -= Math.max(hours * hour.low(), hours * hour.high());
      most -= Math.min(hours * hour.low(), hours * hour.high());
    }
    double typical = net(typical());
    return new Spread(Math.min(least, typical), typical, Math.max(most, typical));
  }
}
