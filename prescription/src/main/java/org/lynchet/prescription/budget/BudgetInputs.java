package org.lynchet.prescription.budget;

import java.util.ArrayList;
import java.util.List;
import org.lynchet.prescription.quantity.Spread;

/**
 * Lists the numbers of a budget that are not known for sure, and adds the budget up for any values
 * of them: each crop's yield in blocks, its change, then its price, in the crops' order; the cost
 * of an hour last.
 */
final class BudgetInputs {

  /** One uncertain number. */
  record Input(BudgetInput name, Spread spread, String unit) {}

  private final BudgetFacts facts;
  private final List<Input> inputs = new ArrayList<>();

  BudgetInputs(BudgetFacts facts) {
    this.facts = facts;
    for (CropChange crop : facts.crops()) {
      inputs.add(
          new Input(
              BudgetInput.yieldInBlocks(crop.crop()),
              crop.yieldInBlocks(),
              crop.unit().yieldSymbol()));
      inputs.add(new Input(BudgetInput.yieldChange(crop.crop()), crop.yieldChange(), "%"));
      inputs.add(
          new Input(BudgetInput.price(crop.crop()), crop.price(), "/" + crop.unit().symbol()));
    }
    Spread hour = facts.machineCost();
    if (hour != null) {
      inputs.add(new Input(BudgetInput.HOUR, hour, "/h"));
    }
  }

  List<Input> inputs() {
    return inputs;
  }

  /** The typical value of each input. */
  double[] typical() {
    return inputs.stream().mapToDouble(input -> input.spread().typical()).toArray();
  }

  /**
   * What each item does to the net, in the order of the inputs, then seed, then extra costs. An
   * item is a product of its inputs, no two items have one in common, and so each of them is at its
   * lowest and highest where its inputs are at theirs.
   */
  List<NetItem> items() {
    List<NetItem> items = new ArrayList<>();
    for (CropChange crop : facts.crops()) {
      Spread grain = crop.yieldChange().times(crop.yieldInBlocks());
      items.add(
          new NetItem(
              crop.crop() + ", change of yield",
              NetItem.Kind.RETURN,
              grain.times(crop.price()).times(crop.areas())));
    }
    Spread hour = facts.machineCost();
    if (hour != null) {
      items.add(
          new NetItem("time in the field", NetItem.Kind.COST, hour.times(-facts.moreHours())));
    }
    items.add(new NetItem("seed", NetItem.Kind.COST, Spread.exactly(-facts.moreSeed())));
    for (BudgetLine extra : facts.extraCosts()) {
      items.add(
          new NetItem(
              extra.item(), NetItem.Kind.COST, Spread.exactly(-extra.amount().doubleValue())));
    }
    items.removeIf(NetItem::isNothing);
    return items;
  }

  /** The change of net at values of the inputs, not rounded; linear in each of them. */
  double net(double[] values) {
    double net = -facts.moreSeed();
    int at = 0;
    for (CropChange crop : facts.crops()) {
      net += crop.areas() * values[at++] * values[at++] * values[at++];
    }
    if (facts.machineCost() != null) {
      net -= facts.moreHours() * values[at];
    }
    for (BudgetLine extra : facts.extraCosts()) {
      net -= extra.amount().doubleValue();
    }
    return net;
  }
}
