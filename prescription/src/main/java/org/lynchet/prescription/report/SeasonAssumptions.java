package org.lynchet.prescription.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import org.lynchet.prescription.defaults.Defaults;
import org.lynchet.prescription.light.LightRequest;
import org.lynchet.prescription.plan.ForecastChoices;
import org.lynchet.prescription.plan.Plan;
import org.lynchet.prescription.plan.PlannedStrip;
import org.lynchet.prescription.quantity.Spread;

/** Lists what a season brings, and how yields answer to light. */
final class SeasonAssumptions {
  /** Follows the source of what a place south of the equator turns by half a year. */
  static final String IN_THE_SOUTH = "; half a year on in the south";

  private final Plan plan;
  private final LightRequest light;
  private final Defaults defaults = Defaults.get();
  private final List<Assumption> all = new ArrayList<>();

  private SeasonAssumptions(Plan plan, LightRequest light) {
    this.plan = plan;
    this.light = light;
  }

  static List<Assumption> of(Plan plan, LightRequest light) {
    SeasonAssumptions season = new SeasonAssumptions(plan, light);
    season.addSeason();
    season.addClearness();
    season.addResponses();
    return season.all;
  }

  private void addSeason() {
    ForecastChoices forecast = plan.forecast();
    String season = forecast.season().name().toLowerCase(Locale.ROOT);
    addBelow("season." + season, "gain kept in a " + season + " season, ", "forecast.season");
    if (plan.date() == null) {
      all.add(
          new Assumption(
              "year of the sun's path",
              defaults.text("forecast.year"),
              defaults.source("forecast.year"),
              "date"));
    }
  }

  private void addClearness() {
    boolean told = !plan.forecast().clearness().isEmpty();
    String source = defaults.source("clearness");
    all.add(
        new Assumption(
            "clearness, January to December",
            light.clearness().stream().map(NumberWords::plain).collect(Collectors.joining(", ")),
            told ? Assumption.PLAN : inPlace(source, light),
            "forecast.clearness"));
  }

  /** A source with what the place makes of it. */
  static String inPlace(String source, LightRequest light) {
    return light.latitudeDegrees() < 0 ? source + IN_THE_SOUTH : source;
  }

  private void addResponses() {
    for (String crop : plan.strips().stream().map(PlannedStrip::crop).distinct().toList()) {
      String what = crop + ", yield for light, ";
      String key = "forecast.response." + crop;
      Spread own = plan.forecast().responses().get(crop);
      if (own == null) {
        addBelow("response." + defaults.nameOf(crop), what, key);
      } else {
        all.add(Assumption.ofPlan(what + "low / typical / high", NumberWords.spread(own), key));
      }
    }
  }

  /** The defaults below a key; neighbours with the same source stand together. */
  private void addBelow(String folder, String whole, String change) {
    List<Assumption> parts =
        defaults.all().stream()
            .filter(value -> value.key().startsWith(folder + "."))
            .map(
                value ->
                    new Assumption(
                        value.key().substring(folder.length() + 1),
                        value.value(),
                        value.source(),
                        change))
            .toList();
    all.addAll(Assumption.joined(parts, whole, change));
  }
}
