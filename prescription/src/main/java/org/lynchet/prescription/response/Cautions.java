package org.lynchet.prescription.response;

import java.util.List;
import java.util.stream.Stream;
import org.lynchet.prescription.plan.ForecastChoices.Season;

/** Says what a forecast is not. */
public final class Cautions {
  private static final String DRY_NEXT =
      """
      Dry-season warning: gains at the tall crop's edge can vanish in a drought, mostly on its sunny
        side, while the short crop still loses; see it with forecast.season: dry.
      """;

  private static final String DRY_NOW =
      """
      Dry-season warning: the range above lets gains at the tall crop's edge shrink or vanish, as in
        published droughts; the short crop's losses stay whole.
      """;

  private static final String REST =
      """
      A forecast is not a promise: light is physics, yield depends on water, hybrids and weather. The
        ranges are set against published trials (LIGHT-AND-YIELD.md). Not agronomic or
        financial advice from a licensed professional.
      """;

  private Cautions() {}

  /** The cautions for a season; the dry-season warning is always among them. */
  public static String text(Season season) {
    return dry(season) + REST;
  }

  /** The same, each caution on one line. */
  public static List<String> sentences(Season season) {
    return Stream.of(dry(season), REST)
        .map(caution -> caution.strip().replaceAll("\\s+", " "))
        .toList();
  }

  private static String dry(Season season) {
    return season == Season.DRY ? DRY_NOW : DRY_NEXT;
  }
}
