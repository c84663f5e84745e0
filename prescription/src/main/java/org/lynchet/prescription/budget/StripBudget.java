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
 * @param net change of net: its typical value, and the least and the most that any values within
 *     their spreads give together
 * @param swings what each uncertain number does alone, the widest first
 */
public record StripBudget(BudgetFacts facts, PartialBudget typical, Spread net, List<Swing> swings)
    implements Serializable {

  /** Copies the list. */
  public StripBudget {
    swings = List.copyOf(swings);
  }

  /** Works the budget out. */
  public static StripBudget of(BudgetFacts facts) {
    BudgetInputs inputs = new BudgetInputs(facts);
    double[] typical = inputs.typical();
    return new StripBudget(
        facts, inputs.budget(typical), inputs.netSpread(), swings(inputs, typical));
  }

  /** The change of net for one of a unit of area, over the whole field. */
  public Spread netPer(AreaUnit unit) {
    double areas = facts.fieldSquareMetres() / unit.squareMetres();
    return new Spread(net.low() / areas, net.typical() / areas, net.high() / areas);
  }

  /**
   * The change of a crop's yield at which net does not change, all else typical; none if the crop
   * brings nothing.
   */
  public OptionalDouble breakEvenYieldChange(String crop) {
    BudgetInputs inputs = new BudgetInputs(facts);
    return breakEven(inputs, inputs.typical(), "change of yield, " + crop);
  }

  /**
   * The price of a crop at which net does not change, all else typical; none if its yield does not
   * change, or if no price above 0 does it.
   */
  public OptionalDouble breakEvenPrice(String crop) {
    BudgetInputs inputs = new BudgetInputs(facts);
    OptionalDouble price = breakEven(inputs, inputs.typical(), "price, " + crop);
    return price.isPresent() && price.getAsDouble() > 0 ? price : OptionalDouble.empty();
  }

  /** Net is linear in each input: two points give the place where it is 0. */
  private static OptionalDouble breakEven(BudgetInputs inputs, double[] typical, String name) {
    for (int i = 0; i < typical.length; i++) {
      if (inputs.inputs().get(i).name().equals(name)) {
        double atZero = inputs.net(with(typical, i, 0));
        double slope = inputs.net(with(typical, i, 1)) - atZero;
        return slope == 0 ? OptionalDouble.empty() : OptionalDouble.of(-atZero / slope);
      }
    }
    throw new IllegalArgumentException(name + " is not in the budget");
  }

  private static List<Swing> swings(BudgetInputs inputs, double[] typical) {
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
