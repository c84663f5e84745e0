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
 * @param net change of net, the sum of the items: its typical value, and the least and the most
 *     that any values within their spreads give together
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
    Spread net =
        items.stream().map(NetItem::change).reduce(Spread.exactly(0), Spread::plus).rounded(2);
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

  /**
   * The ratio of a crop's price to another's at which net does not change, the other's price and
   * all else typical; none if the crop has no such price.
   */
  public OptionalDouble breakEvenPriceRatio(String crop, String other) {
    OptionalDouble price = breakEvenPrice(crop);
    return price.isPresent()
        ? OptionalDouble.of(price.getAsDouble() / change(other).price().typical())
        : price;
  }

  /** The crop whose yield gains most by strips, or loses least; the first of several alike. */
  public CropChange gaining() {
    return facts.crops().stream().reduce((a, b) -> gain(b) > gain(a) ? b : a).orElseThrow();
  }

  /** The crop whose yield loses most by strips, or gains least; the last of several alike. */
  public CropChange losing() {
    return facts.crops().stream().reduce((a, b) -> gain(b) <= gain(a) ? b : a).orElseThrow();
  }

  private static double gain(CropChange crop) {
    return crop.yieldChange().typical();
  }

  private CropChange change(String name) {
    return facts.crops().stream()
        .filter(crop -> crop.crop().equals(name))
        .findFirst()
        .orElseThrow(() -> new IllegalArgumentException(name + " is not in the budget"));
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
              input.unit(),
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
