package org.lynchet.prescription.light;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.SortedSet;
import java.util.TreeSet;
import org.lynchet.prescription.sheet.CsvText;

/**
 * Writes the light of rows as CSV (RFC 4180): season, each month of the year that a row's season
 * touches, and the share of the sunny time in shade for each hour with sun.
 *
 * <p>Columns: strip, crop, product, row, offset_m, relative_incident, relative_absorbed; then
 * incident_MM and absorbed_MM for each month, empty where a row has no season; then shade_HH for
 * each hour of local mean solar time.
 */
public final class LightCsv {
  private static final int DECIMALS = 4;

  private final LightResult result;
  private final CsvText csv = new CsvText();

  private LightCsv(LightResult result) {
    this.result = result;
  }

  /** The CSV text; lines end with CR LF. */
  public static String of(LightResult result) {
    return new LightCsv(result).write();
  }

  private String write() {
    List<Integer> months = months();
    List<Integer> hours = hours();
    csv.cells("strip", "crop", "product", "row", "offset_m");
    csv.cells("relative_incident", "relative_absorbed");
    months.forEach(m -> csv.cells(named("incident_", m), named("absorbed_", m)));
    hours.forEach(h -> csv.cell(named("shade_", h)));
    csv.endRow();
    for (RowLight light : result.rows()) {
      write(light, months, hours);
    }
    return csv.toString();
  }

  private static String named(String column, int number) {
    return String.format(Locale.ROOT, "%s%02d", column, number);
  }

  private void write(RowLight light, List<Integer> months, List<Integer> hours) {
    CanopyRow row = light.row();
    csv.cell(row.strip(), 0).cell(row.crop()).cell(row.product()).cell(row.row(), 0);
    csv.cell(row.offsetMetres(), DECIMALS);
    csv.cell(light.relativeIncident(), DECIMALS).cell(light.relativeAbsorbed(), DECIMALS);
    for (int month : months) {
      Optional<RowLight.Month> one =
          light.months().stream().filter(m -> m.month() == month).findFirst();
      if (one.isPresent()) {
        csv.cell(one.get().relativeIncident(), DECIMALS);
        csv.cell(one.get().relativeAbsorbed(), DECIMALS);
      } else {
        csv.cells("", "");
      }
    }
    hours.forEach(hour -> csv.cell(light.shadeByHour().get(hour), DECIMALS));
    csv.endRow();
  }

  /** Months of any row, in the order of the season. */
  private List<Integer> months() {
    List<Integer> months = new ArrayList<>();
    for (RowLight light : result.rows()) {
      light.months().stream()
          .map(RowLight.Month::month)
          .filter(month -> !months.contains(month))
          .forEach(months::add);
    }
    return months;
  }

  /** Hours in which any row is in shade. */
  private List<Integer> hours() {
    SortedSet<Integer> hours = new TreeSet<>();
    for (RowLight light : result.rows()) {
      for (int hour = 0; hour < light.shadeByHour().size(); hour++) {
        if (light.shadeByHour().get(hour) > 0) {
          hours.add(hour);
        }
      }
    }
    return List.copyOf(hours);
  }
}
