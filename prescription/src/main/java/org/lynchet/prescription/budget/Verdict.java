package org.lynchet.prescription.budget;

import java.util.Locale;
import org.lynchet.prescription.quantity.AreaUnit;
import org.lynchet.prescription.quantity.Spread;

/** Says in a plain sentence what a budget comes to. */
public final class Verdict {
  private static final double HALF_A_CENT = 0.005;

  private Verdict() {}

  /** The sentence, for one of a unit of area. */
  public static String of(StripBudget budget, AreaUnit area) {
    Spread net = budget.netPer(area);
    String unit = budget.facts().currency() + "/" + area.symbol();
    String range = String.format(Locale.ROOT, " (%+.2f to %+.2f).", net.low(), net.high());
    if (net.high() < 0) {
      return "Plant blocks: at no numbers of the plan do strips pay; typically they lose "
          + amount(-net.typical())
          + unit
          + range;
    }
    if (net.low() > 0) {
      return "Strips pay at all numbers of the plan; typically "
          + amount(net.typical())
          + unit
          + " more than blocks"
          + range;
    }
    String either = " Whether they pay hangs most on " + most(budget) + ".";
    if (Math.abs(net.typical()) < HALF_A_CENT) {
      return "Typically strips pay what blocks do" + range + either;
    }
    return net.typical() > 0
        ? "Typically strips pay "
            + amount(net.typical())
            + unit
            + " more than blocks"
            + range
            + either
        : "Typically strips lose "
            + amount(-net.typical())
            + unit
            + " against blocks: plant blocks"
            + range
            + either;
  }

  private static String most(StripBudget budget) {
    return budget.swings().isEmpty() ? "nothing" : budget.swings().get(0).input().words();
  }

  private static String amount(double money) {
    return String.format(Locale.ROOT, "%.2f ", money);
  }
}
