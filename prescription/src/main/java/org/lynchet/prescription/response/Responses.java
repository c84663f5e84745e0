package org.lynchet.prescription.response;

import java.io.Serializable;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import org.lynchet.prescription.defaults.Defaults;
import org.lynchet.prescription.fault.Faults;
import org.lynchet.prescription.fault.RejectedException;
import org.lynchet.prescription.plan.ForecastChoices.Season;
import org.lynchet.prescription.plan.Plan;
import org.lynchet.prescription.plan.PlannedStrip;
import org.lynchet.prescription.quantity.Spread;

/**
 * The responses of a plan's crops: the farm's own where the plan gives them, else the defaults.
 *
 * @param byCrop response by crop, in the plan's order
 */
public record Responses(Map<String, Response> byCrop) implements Serializable {

  /** Copies the map, keeping its order. */
  public Responses {
    byCrop = Collections.unmodifiableMap(new LinkedHashMap<>(byCrop));
  }

  /**
   * The responses for a plan.
   *
   * @throws RejectedException if a crop has no response in the plan and no default
   */
  public static Responses of(Plan plan) throws RejectedException {
    Defaults defaults = Defaults.get();
    Faults faults = new Faults();
    Spread kept = kept(defaults, plan.forecast().season());
    Map<String, Response> byCrop = new LinkedHashMap<>();
    Set<String> crops = new LinkedHashSet<>();
    plan.strips().stream().map(PlannedStrip::crop).forEach(crops::add);
    for (String crop : crops) {
      Spread own = plan.forecast().responses().get(crop);
      if (own != null) {
        byCrop.put(crop, new Response(own, kept));
      } else if (defaults.crops().contains(defaults.nameOf(crop))) {
        byCrop.put(crop, new Response(range(defaults, "response." + defaults.nameOf(crop)), kept));
      } else {
        faults.add(
            "nothing is known of how the yield of " + crop + " answers to light",
            plan.place("forecast.response"),
            "defaults are there for " + String.join(", ", defaults.crops()),
            "add forecast.response." + crop + " with low, typical and high");
      }
    }
    faults.throwIfAny();
    return new Responses(byCrop);
  }

  private static Spread kept(Defaults defaults, Season season) {
    return range(defaults, "season." + season.name().toLowerCase(Locale.ROOT));
  }

  private static Spread range(Defaults defaults, String key) {
    return new Spread(
        defaults.number(key + ".low"),
        defaults.number(key + ".typical"),
        defaults.number(key + ".high"));
  }
}
