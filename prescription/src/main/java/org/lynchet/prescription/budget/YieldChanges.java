package org.lynchet.prescription.budget;

import java.io.Serializable;
import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.lynchet.geometry.guidance.Curve;
import org.lynchet.prescription.fault.Faults;
import org.lynchet.prescription.fault.RejectedException;
import org.lynchet.prescription.plan.CropMarket;
import org.lynchet.prescription.plan.Plan;
import org.lynchet.prescription.plan.PlannedStrip;
import org.lynchet.prescription.quantity.Spread;
import org.lynchet.prescription.response.FieldForecast;
import org.lynchet.prescription.response.YieldForecast.CropYield;
import org.lynchet.prescription.zone.FieldLayout;

/**
 * By what share the yields of strips differ from those of blocks: the plan's own numbers where it
 * has them, else what light makes of them.
 *
 * @param byCrop change by crop, in the order of the strips
 * @param forecast the crops whose change is a forecast; the others' is the plan's
 */
public record YieldChanges(Map<String, Spread> byCrop, List<String> forecast)
    implements Serializable {
  /** Of a crop that has no strip in the field. */
  private static final Spread NONE = Spread.exactly(0);

  /** Copies map and list, keeping their order. */
  public YieldChanges {
    byCrop = Collections.unmodifiableMap(new LinkedHashMap<>(byCrop));
    forecast = List.copyOf(forecast);
  }

  /**
   * The changes on a field, along the AB line that its layout has.
   *
   * @throws RejectedException with every fault of the forecast, if one is needed; along a curve
   *     there is none
   */
  public static YieldChanges of(FieldLayout layout) throws RejectedException {
    Plan plan = layout.plan();
    List<String> unknown = unknown(plan);
    if (unknown.isEmpty()) {
      return of(plan, List.of());
    }
    if (layout.guidance() instanceof Curve) {
      Faults faults = new Faults();
      faults.add(
          "rows along a curve have no one heading: how light changes the yield of "
              + String.join(" and ", unknown)
              + " cannot be forecast",
          plan.place("budget.crops"),
          "along a curve, a yield-change of each crop",
          "add yield-change as measured on the farm, or budget a copy of the plan with an AB line");
      faults.throwIfAny();
    }
    return of(plan, FieldForecast.of(layout).crops());
  }

  private static YieldChanges of(Plan plan, List<CropYield> forecast) {
    Map<String, Spread> changes = new LinkedHashMap<>();
    for (PlannedStrip strip : plan.strips()) {
      CropMarket market = plan.budget().crops().get(strip.crop());
      Spread own = market == null ? null : market.yieldChange();
      changes.put(strip.crop(), own == null ? forecast(strip.crop(), forecast) : own);
    }
    return new YieldChanges(changes, unknown(plan));
  }

  private static Spread forecast(String crop, List<CropYield> forecast) {
    return forecast.stream()
        .filter(one -> one.crop().equals(crop))
        .map(one -> one.relativeYield().plus(-1))
        .findFirst()
        .orElse(NONE);
  }

  private static List<String> unknown(Plan plan) {
    List<String> unknown = new ArrayList<>();
    for (String crop : plan.strips().stream().map(PlannedStrip::crop).distinct().toList()) {
      CropMarket market = plan.budget().crops().get(crop);
      if (market == null || market.yieldChange() == null) {
        unknown.add(crop);
      }
    }
    return unknown;
  }
}
