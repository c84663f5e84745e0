package org.lynchet.prescription.response;

import java.io.Serializable;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.lynchet.prescription.defaults.Defaults;
import org.lynchet.prescription.fault.Faults;
import org.lynchet.prescription.fault.RejectedException;
import org.lynchet.prescription.light.LightRequest;
import org.lynchet.prescription.light.LightResult;
import org.lynchet.prescription.light.OpenSides;
import org.lynchet.prescription.light.OpenSides.OpenSide;
import org.lynchet.prescription.light.PlanLight;
import org.lynchet.prescription.light.SeasonLight;
import org.lynchet.prescription.plan.Plan;

/**
 * Forecasts light and yield of a plan, and what to plant on its borders.
 *
 * @param plan the plan
 * @param light the light of its rows
 * @param yields their yields
 * @param sides the light of each crop's outermost rows at an open side of the field
 * @param responses how its crops answer to light
 */
public record PlanForecast(
    Plan plan, LightResult light, YieldForecast yields, List<OpenSide> sides, Responses responses)
    implements Serializable {

  /** Copies the list. */
  public PlanForecast {
    sides = List.copyOf(sides);
  }

  /**
   * The forecast of a plan.
   *
   * @throws RejectedException with every fault of what the forecast goes by
   */
  public static PlanForecast of(Plan plan) throws RejectedException {
    Faults faults = new Faults();
    Optional<LightRequest> request = Optional.empty();
    Optional<Responses> responses = Optional.empty();
    try {
      request = Optional.of(PlanLight.request(plan));
    } catch (RejectedException rejected) {
      faults.addAll(rejected);
    }
    try {
      responses = Optional.of(Responses.of(plan));
    } catch (RejectedException rejected) {
      faults.addAll(rejected);
    }
    faults.throwIfAny();
    LightResult light = SeasonLight.of(request.orElseThrow());
    Responses ofCrops = responses.orElseThrow();
    return new PlanForecast(
        plan, light, YieldForecast.of(light, ofCrops), OpenSides.of(light.request()), ofCrops);
  }

  /**
   * Tries a short-stature product on the borders of tall strips. Its height is that of the plan's
   * own border rows where they are lower than the rest of their strip, else the default of a
   * short-stature product of the crop.
   */
  public List<BorderAdvice> borderAdvice() {
    List<BorderAdvice> all = new ArrayList<>();
    for (ShortHeights.OfStrip strip : ShortHeights.of(light.request(), Defaults.get())) {
      BorderChoice.find(light.request(), responses, strip.strip(), strip.metres())
          .ifPresent(all::add);
    }
    return all;
  }

  /** The tables. */
  public String table() {
    return ForecastTable.of(this);
  }
}
