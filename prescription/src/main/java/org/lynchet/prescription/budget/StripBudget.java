package org.lynchet.prescription.budget;

import java.io.Serializable;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.OptionalDouble;
import org.lynchet.prescription.quantity.AreaUnit;
import org.lynchet.prescription.quantity.Spread;

/**
 * Strips against separate blocks with the same area of each crop.
 *
 * @param facts what strips change
 * @param typical the budget at typical values
 * @param items what each item does to the net
 * @param net change of net: its typical value, and the least and the most that any values within
 *     their spreads give together
 * @param swings what each uncertain number does alone, the widest first
 */
public record StripBudget(
    BudgetFacts facts, PartialBudget typical, List<NetItem> items, Spread net, List<Swing> swings)
    implements Serializable {

  /** Copies the lists. */
  public StripBudget {
    items = List.copyOf(items);
    swings = List.copyOf(swings);
  }

  /** Works the budget out. */
  public static StripBudget of(BudgetFacts facts) {
    BudgetInputs inputs = new BudgetInputs(facts);
    List<NetItem> items = inputs.items();
    Spread net = items.stream().map(NetItem::change).reduce(Spread.exactly(0), Spread::plus);
    return new StripBudget(facts, PartialBudget.typical(items), items, net, swings(inputs));
  }

  /** The change of net for one of a unit of area, over the whole field. */
  public Spread netPer(AreaUnit unit) {
    return net.times(unit.squareMetres() / facts.fieldSquareMetres());
  }

  /**
   * The change of a crop's yield at which net does not change, all else typical; none if the crop
   * brings nothing.
   */
  public OptionalDouble breakEvenYieldChange(String crop) {
    return breakEven(BudgetInput.yieldChange(crop));
  }

  /**
   * The price of a crop at which net does not change, all else typical; none if its yield does not
   * change, or if no price above 0 does it.
   */
  public OptionalDouble breakEvenPrice(String crop) {
    OptionalDouble price = breakEven(BudgetInput.price(crop));
    return price.isPresent() && price.getAsDouble() > 0 ? price : OptionalDouble.empty();
  }

  /** Net is linear in each input: two points give the place where it is 0. */
  private OptionalDouble breakEven(BudgetInput input) {
    BudgetInputs inputs = new BudgetInputs(facts);
    double[] typical = inputs.typical();
    for (int i = 0; i < typical.length; i++) {
      if (inputs.inputs().get(i).name().equals(input)) {
        double atZero = inputs.net(with(typical, i, 0));
        double slope = inputs.net(with(typical, i, 1)) - atZero;
        return slope == 0 ? OptionalDouble.empty() : OptionalDouble.of(-atZero / slope);
      }
    }
    throw new IllegalArgumentException(input.words() + " is not in the budget");
  }

  private static List<Swing> swings(BudgetInputs inputs) {
    double[] typical = inputs.typical();
    List<Swing> swings = new ArrayList<>();
    for (int i = 0; i < typical.length; i++) {
      BudgetInputs.Input input = inputs.inputs().get(i);
      Spread spread = input.spread();
      swings.add(
          new Swing(
              input.name(),
              spread,
              inputs.net(with(typical, i, spread.low())),
              inputs.net(with(typical, i, spread.high()))));
    }
    swings.sort(Comparator.comparingDouble(Swing::width).reversed());
    return swings;
  }

  private static double[] with(double[] values, int at, double value) {
    double[] changed = values.clone();
    changed[at] = value;
    return changed;
  }
}
