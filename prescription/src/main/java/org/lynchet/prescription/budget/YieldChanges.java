package org.lynchet.prescription.budget;

import java.io.Serializable;
import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.locationtech.jts.geom.Coordinate;
import org.lynchet.geometry.guidance.Curve;
import org.lynchet.geometry.guidance.OffsetFrame;
import org.lynchet.prescription.fault.Faults;
import org.lynchet.prescription.fault.RejectedException;
import org.lynchet.prescription.plan.CropMarket;
import org.lynchet.prescription.plan.Plan;
import org.lynchet.prescription.plan.PlannedGuidance;
import org.lynchet.prescription.plan.PlannedGuidance.Position;
import org.lynchet.prescription.plan.PlannedGuidance.ThroughPoint;
import org.lynchet.prescription.plan.PlannedStrip;
import org.lynchet.prescription.quantity.Spread;
import org.lynchet.prescription.response.PlanForecast;
import org.lynchet.prescription.response.YieldForecast;
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
      return of(plan, Map.of());
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
    return of(plan, relative(PlanForecast.of(along(plan, layout.frame())).yields()));
  }

  /**
   * The changes that go with a forecast.
   *
   * @param relativeYields of each crop without a change of its own in the plan, 1 for that of a
   *     block
   */
  public static YieldChanges of(Plan plan, Map<String, Spread> relativeYields) {
    List<String> unknown = unknown(plan);
    Map<String, Spread> changes = new LinkedHashMap<>();
    for (PlannedStrip strip : plan.strips()) {
      CropMarket market = plan.budget().crops().get(strip.crop());
      Spread own = market == null ? null : market.yieldChange();
      Spread relative = relativeYields.get(strip.crop());
      if (own != null) {
        changes.put(strip.crop(), own);
      } else if (relative != null) {
        changes.put(strip.crop(), relative.plus(-1));
      } else {
        throw new IllegalArgumentException("no forecast of " + strip.crop());
      }
    }
    return new YieldChanges(changes, unknown);
  }

  /** The relative yields of a forecast, by crop. */
  public static Map<String, Spread> relative(YieldForecast forecast) {
    Map<String, Spread> relative = new LinkedHashMap<>();
    forecast.crops().forEach(crop -> relative.put(crop.crop(), crop.relativeYield()));
    return relative;
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

  /** The plan along the AB line of a layout, which may come from a file or have been placed. */
  private static Plan along(Plan plan, OffsetFrame frame) {
    Coordinate a = frame.toLonLat(0, 0);
    return plan.withGuidance(
        new PlannedGuidance(
            new ThroughPoint(new Position(a.x, a.y), frame.headingDegrees()),
            plan.guidance().abLineIs()));
  }
}
