package org.lynchet.prescription.compare;

import java.util.List;
import java.util.Map;
import org.lynchet.prescription.plan.CropMarket;
import org.lynchet.prescription.plan.PlannedBudget;
import org.lynchet.prescription.quantity.GrainUnit;
import org.lynchet.prescription.quantity.Spread;

/** Gives the money of plans that are compared in tests, all invented. */
public final class ComparedMoney {
  private ComparedMoney() {}

  /** Money whose yields are forecast, in a currency. */
  public static PlannedBudget in(String currency) {
    return new PlannedBudget(
        currency,
        Map.of(
            "corn", market(new Spread(3.5, 4, 5), 190),
            "soybean", market(new Spread(9, 10, 12), 55)),
        Map.of("tall-108", 280.0, "short-106", 310.0),
        new Spread(100, 150, 200),
        2,
        List.of(),
        Map.of());
  }

  private static CropMarket market(Spread price, double bushels) {
    return new CropMarket(GrainUnit.BUSHEL, price, Spread.exactly(bushels), null);
  }
}
