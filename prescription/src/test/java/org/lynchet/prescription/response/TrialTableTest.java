package org.lynchet.prescription.response;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.lynchet.prescription.defaults.Defaults;
import org.lynchet.prescription.light.CanopyRow;
import org.lynchet.prescription.light.CanopyTraits;
import org.lynchet.prescription.light.LightRequest;
import org.lynchet.prescription.light.Sampling;
import org.lynchet.prescription.light.SeasonLight;
import org.lynchet.prescription.quantity.Spread;
import org.lynchet.prescription.response.Trial.Direction;

/**
 * Sets the forecast with its defaults against published trials. The table in LIGHT-AND-YIELD.md is
 * made here; where it is no longer what comes out, this writes the new one to target/trials.md.
 */
class TrialTableTest {
  private static final Path DOCUMENT = Path.of("LIGHT-AND-YIELD.md");
  private static final double ROW = 0.762;

  private final Defaults defaults = Defaults.get();

  @Test
  void documentHasTheTableThatComesOut() throws IOException {
    String table = table();
    Files.writeString(Path.of("target", "trials.md"), table);
    assertThat(Files.readString(DOCUMENT)).contains(table);
  }

  /** What the defaults were chosen for: most results by row position lie within the range. */
  @Test
  void mostResultsByRowPositionAreWithin() {
    List<Trial> byRow =
        Trials.all().stream().filter(trial -> trial.part().text.contains("outside row")).toList();
    long within = byRow.stream().filter(trial -> isWithin(trial, forecast(trial))).count();
    assertThat(byRow).hasSize(12);
    assertThat(within).isGreaterThanOrEqualTo(9);
  }

  /** Published ratios of these two crops lie near 1 (Crookston and Hill 1979: never different). */
  @Test
  void landEquivalentRatioIsNearOne() {
    for (double heading : new double[] {0, 90}) {
      for (int rows : new int[] {4, 6, 12, 24}) {
        Spread ratio = forecast(rows, 44, heading, "normal").landEquivalentRatio();
        assertThat(ratio.typical()).isBetween(0.93, 1.03);
        assertThat(ratio.low()).isLessThan(ratio.typical());
        assertThat(ratio.high()).isGreaterThan(ratio.typical());
      }
    }
  }

  private String table() {
    StringBuilder table =
        new StringBuilder(
            "| study | rows | direction | what | published % | forecast % low / typical / high |"
                + " within | note |\n|---|---|---|---|---|---|---|---|\n");
    int within = 0;
    for (Trial trial : Trials.all()) {
      Spread forecast = forecast(trial);
      boolean hit = isWithin(trial, forecast);
      within += hit ? 1 : 0;
      table.append(
          String.format(
              Locale.ROOT,
              "| %s | %d | %s | %s | %s | %+.1f / %+.1f / %+.1f | %s | %s |%n",
              trial.study(),
              trial.rows(),
              trial.direction().text,
              trial.part().text,
              published(trial),
              forecast.low(),
              forecast.typical(),
              forecast.high(),
              hit ? "yes" : "**no**",
              trial.note()));
    }
    return table
        .append(
            String.format(
                Locale.ROOT, "%nWithin the range: %d of %d.%n", within, Trials.all().size()))
        .toString();
  }

  private static String published(Trial trial) {
    return trial.low() == trial.high()
        ? String.format(Locale.ROOT, "%+.1f", trial.low())
        : String.format(Locale.ROOT, "%+.1f to %+.1f", trial.low(), trial.high());
  }

  private static boolean isWithin(Trial trial, Spread forecast) {
    return trial.high() >= forecast.low() && trial.low() <= forecast.high();
  }

  /** In per cent of change; where the direction is not told, of both together. */
  private Spread forecast(Trial trial) {
    String season = trial.dry() ? "dry" : "normal";
    List<Spread> ranges =
        (trial.direction() == Direction.NOT_TOLD
                ? Stream.of(Direction.EAST_WEST, Direction.NORTH_SOUTH)
                : Stream.of(trial.direction()))
            .map(one -> forecast(trial.rows(), trial.latitude(), one.heading, season))
            .map(forecast -> part(trial, forecast))
            .toList();
    return new Spread(
        change(ranges.stream().mapToDouble(Spread::low).min().orElseThrow()),
        change(ranges.stream().mapToDouble(Spread::typical).average().orElseThrow()),
        change(ranges.stream().mapToDouble(Spread::high).max().orElseThrow()));
  }

  private static double change(double relative) {
    return 100 * (relative - 1);
  }

  private static Spread part(Trial trial, YieldForecast forecast) {
    int n = trial.rows();
    List<Spread> rows =
        forecast.rows().stream().map(YieldForecast.RowYield::relativeYield).toList();
    return switch (trial.part()) {
      case CORN_FIRST -> rows.get(0);
      case CORN_LAST -> rows.get(n - 1);
      case CORN_OUTER -> rows.get(0).plus(rows.get(n - 1)).times(0.5);
      case CORN -> forecast.crop("corn").relativeYield();
      case SOYBEAN_FIRST -> rows.get(n);
      case SOYBEAN_LAST -> rows.get(2 * n - 1);
      case SOYBEAN_OUTER -> rows.get(n).plus(rows.get(2 * n - 1)).times(0.5);
      case SOYBEAN -> forecast.crop("soybean").relativeYield();
      case LAND -> forecast.landEquivalentRatio();
    };
  }

  private YieldForecast forecast(int count, double latitude, double heading, String season) {
    List<CanopyRow> rows = new ArrayList<>();
    for (int strip = 1; strip <= 2; strip++) {
      String crop = strip == 1 ? "corn" : "soybean";
      for (int row = 1; row <= count; row++) {
        double offset = ((strip - 1) * count + row - 0.5) * ROW;
        rows.add(new CanopyRow(strip, crop, crop, row, offset, ROW, canopy(crop)));
      }
    }
    LightRequest request =
        new LightRequest(
            -94, latitude, heading, rows, defaults.numbers("clearness"), Sampling.QUICK);
    Spread kept = range("season." + season);
    return YieldForecast.of(
        SeasonLight.of(request),
        new Responses(
            Map.of(
                "corn", new Response(range("response.corn"), kept),
                "soybean", new Response(range("response.soybean"), kept))));
  }

  private Spread range(String key) {
    return new Spread(
        defaults.number(key + ".low"),
        defaults.number(key + ".typical"),
        defaults.number(key + ".high"));
  }

  private CanopyTraits canopy(String crop) {
    String key = "canopies." + crop + ".";
    LocalDate planting = LocalDate.parse("2025-" + defaults.text(key + "planting"));
    return new CanopyTraits(
        defaults.number(key + "height-metres"),
        defaults.number(key + "leaf-area-index"),
        defaults.number(key + "extinction"),
        planting,
        planting.plusDays((long) defaults.number(key + "days-to-maturity")),
        defaults.number(key + "half-leaf"),
        defaults.number(key + "full-leaf"),
        defaults.number(key + "decline-from"),
        defaults.number(key + "leaf-at-maturity"),
        defaults.number(key + "width-per-height"));
  }
}
