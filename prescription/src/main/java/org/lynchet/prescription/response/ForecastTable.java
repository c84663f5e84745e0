package org.lynchet.prescription.response;

import java.util.Locale;
import java.util.Objects;
import org.lynchet.prescription.light.Compass;
import org.lynchet.prescription.light.LightRequest;
import org.lynchet.prescription.light.OpenSides.OpenSide;
import org.lynchet.prescription.light.RowLight;
import org.lynchet.prescription.plan.ForecastChoices.Season;
import org.lynchet.prescription.plan.Plan;
import org.lynchet.prescription.plan.Seeding;
import org.lynchet.prescription.quantity.AreaUnit;
import org.lynchet.prescription.quantity.LengthUnit;
import org.lynchet.prescription.quantity.SeedingRate;
import org.lynchet.prescription.quantity.Spread;
import org.lynchet.prescription.response.YieldForecast.CropYield;
import org.lynchet.prescription.response.YieldForecast.RowYield;

/** Shows a forecast of light and yield as tables of at most 100 columns. */
public final class ForecastTable {
  private static final int[] QUARTERS = {6, 9, 12, 15, 18};

  private final PlanForecast whole;
  private final Plan plan;
  private final LightRequest request;
  private final YieldForecast forecast;
  private final StringBuilder text = new StringBuilder();

  private ForecastTable(PlanForecast whole) {
    this.whole = whole;
    this.plan = whole.plan();
    this.request = whole.light().request();
    this.forecast = whole.yields();
  }

  /** The tables, what to plant on the border and the cautions; each line ends with a line feed. */
  public static String of(PlanForecast forecast) {
    ForecastTable table = new ForecastTable(forecast);
    table.head();
    table.rows();
    table.crops();
    table.sides();
    forecast.borderAdvice().forEach(one -> table.text.append(BorderText.of(forecast.plan(), one)));
    table.text.append(Cautions.text(forecast.plan().forecast().season()));
    return table.text.toString();
  }

  private void head() {
    double heading = request.headingDegrees();
    line(
        "%s: latitude %.2f, AB line on %.2f degrees; left of it is %s, right of it %s",
        plan.field().name(),
        request.latitudeDegrees(),
        heading,
        Compass.point(heading - 90),
        Compass.point(heading + 90));
    Season season = plan.forecast().season();
    line(
        "Light and yield relative to the same product in a wide block; a %s season",
        season.name().toLowerCase(Locale.ROOT));
    line("Rows as inside the field, where the pattern goes on to both sides");
    line("6-9 ... -18: per cent of the sunny time in shade, by hours of local mean solar time");
    line("");
  }

  private void rows() {
    LengthUnit unit = unit();
    line(
        "%-5s %-10s %-14s %3s %9s %8s %8s %5s %9s %4s %4s %4s %4s",
        "STRIP",
        "CROP",
        "PRODUCT",
        "ROW",
        "OFFSET " + unit.symbol(),
        "INCIDENT",
        "ABSORBED",
        "YIELD",
        "low-high",
        "6-9",
        "-12",
        "-15",
        "-18");
    for (RowYield row : forecast.rows()) {
      RowLight light = row.light();
      line(
          "%-5d %-10s %-14s %3d %9.1f %8.2f %8.2f %5.2f %4.2f-%4.2f %4s %4s %4s %4s",
          light.row().strip(),
          cut(light.row().crop(), 10),
          cut(light.row().product(), 14),
          light.row().row(),
          light.row().offsetMetres() / unit.metres(),
          light.relativeIncident(),
          light.relativeAbsorbed(),
          row.relativeYield().typical(),
          row.relativeYield().low(),
          row.relativeYield().high(),
          shade(light, 0),
          shade(light, 1),
          shade(light, 2),
          shade(light, 3));
    }
    line("");
  }

  private static String shade(RowLight light, int quarter) {
    double sum = 0;
    for (int hour = QUARTERS[quarter]; hour < QUARTERS[quarter + 1]; hour++) {
      sum += light.shadeByHour().get(hour);
    }
    double share = sum / (QUARTERS[quarter + 1] - QUARTERS[quarter]);
    return String.format(Locale.ROOT, "%.0f", 100 * share);
  }

  private void crops() {
    line("%-12s %9s %9s %12s %6s %6s", "CROP", "LAND", "ABSORBED", "YIELD typical", "low", "high");
    for (CropYield crop : forecast.crops()) {
      Spread range = crop.relativeYield();
      line(
          "%-12s %7.1f %% %9.3f %12.3f %6.3f %6.3f",
          cut(crop.crop(), 12),
          100 * crop.shareOfLand(),
          crop.relativeAbsorbed(),
          range.typical(),
          range.low(),
          range.high());
    }
    Spread ratio = forecast.landEquivalentRatio();
    line(
        "%-32s %12.3f %6.3f %6.3f   1 is what separate blocks give",
        "Land equivalent ratio", ratio.typical(), ratio.low(), ratio.high());
    line("Published ratios of corn and soybean in strips lie near 1, on either side.");
    line("");
  }

  private void sides() {
    line(
        "%-12s %-9s %8s %8s %12s %6s %6s",
        "CROP", "SIDE", "INCIDENT", "ABSORBED", "YIELD typical", "low", "high");
    for (OpenSide side : whole.sides()) {
      RowLight light = side.light();
      Response response =
          Objects.requireNonNull(whole.responses().byCrop().get(light.row().crop()));
      Spread yield = response.relativeYield(light.relativeAbsorbed());
      line(
          "%-12s %-9s %8.2f %8.2f %12.2f %6.2f %6.2f",
          cut(light.row().crop(), 12),
          Compass.point(request.headingDegrees() + (side.left() ? -90 : 90)),
          light.relativeIncident(),
          light.relativeAbsorbed(),
          yield.typical(),
          yield.low(),
          yield.high());
    }
    line("The outermost row at an open side of the field, which separate blocks have as well.");
    line("");
  }

  /** Feet where the first strip's rate is on acres, else metres. */
  private LengthUnit unit() {
    Seeding centre = plan.strips().get(0).centre();
    SeedingRate rate = centre.everywhere();
    SeedingRate any = rate == null ? centre.byManagementZone().values().iterator().next() : rate;
    return any.per() == AreaUnit.ACRE ? LengthUnit.FOOT : LengthUnit.METRE;
  }

  private static String cut(String name, int width) {
    return name.codePointCount(0, name.length()) <= width
        ? name
        : name.substring(0, name.offsetByCodePoints(0, width - 2)) + "..";
  }

  private void line(String format, Object... values) {
    text.append(String.format(Locale.ROOT, format, values).stripTrailing()).append('\n');
  }
}
