package org.lynchet.prescription.budget;

import java.util.Locale;
import org.lynchet.prescription.quantity.AreaUnit;
import org.lynchet.prescription.quantity.Spread;

/** Says in a plain sentence what a budget comes to. */
public final class Verdict {
  private static final double HALF_A_CENT = 0.005;

  private Verdict() {}

  /** The sentence, or two, for one of a unit of area. */
  public static String of(StripBudget budget, AreaUnit area) {
    Spread net = budget.netPer(area);
    String range = String.format(Locale.ROOT, " (%+.2f to %+.2f)", net.low(), net.high());
    String unit = budget.facts().currency() + "/" + area.symbol() + range;
    if (net.high() < 0) {
      return "Plant blocks: at no numbers of the plan do strips pay; typically they lose "
          + amount(-net.typical())
          + unit
          + ".";
    }
    if (net.low() > 0) {
      return "Strips pay at all numbers of the plan; typically they bring "
          + amount(net.typical())
          + unit
          + " more than blocks.";
    }
    return typically(net, unit)
        + " Whether strips pay hangs most on the "
        + budget.swings().get(0).input().words()
        + ".";
  }

  private static String typically(Spread net, String unit) {
    if (Math.abs(net.typical()) < HALF_A_CENT) {
      return "Typically strips bring what blocks do, " + amount(0) + unit + ".";
    }
    return net.typical() > 0
        ? "Typically strips bring " + amount(net.typical()) + unit + " more than blocks."
        : "Typically strips lose "
            + amount(-net.typical())
            + unit
            + " against blocks: plant blocks.";
  }

  private static String amount(double money) {
    return String.format(Locale.ROOT, "%.2f ", money);
  }
}
