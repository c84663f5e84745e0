package org.lynchet.prescription.light;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.SortedSet;
import java.util.TreeSet;

/**
 * Writes the light of rows as CSV (RFC 4180): season, each month of the year that a row's season
 * touches, and the share of the sunny time in shade for each hour with sun.
 *
 * <p>Columns: strip, crop, product, row, offset_m, relative_incident, relative_absorbed; then
 * incident_MM and absorbed_MM for each month, empty where a row has no season; then shade_HH for
 * each hour of local mean solar time.
 */
public final class LightCsv {
  private final LightResult result;
  private final StringBuilder csv = new StringBuilder();

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
    csv.append("strip,crop,product,row,offset_m,relative_incident,relative_absorbed");
    months.forEach(
        m -> csv.append(String.format(Locale.ROOT, ",incident_%02d,absorbed_%02d", m, m)));
    hours.forEach(h -> csv.append(String.format(Locale.ROOT, ",shade_%02d", h)));
    csv.append("\r\n");
    for (RowLight light : result.rows()) {
      write(light, months, hours);
    }
    return csv.toString();
  }

  private void write(RowLight light, List<Integer> months, List<Integer> hours) {
    CanopyRow row = light.row();
    csv.append(row.strip()).append(',');
    text(row.crop());
    text(row.product());
    csv.append(row.row());
    number(row.offsetMetres());
    number(light.relativeIncident());
    number(light.relativeAbsorbed());
    for (int month : months) {
      Optional<RowLight.Month> one =
          light.months().stream().filter(m -> m.month() == month).findFirst();
      if (one.isPresent()) {
        number(one.get().relativeIncident());
        number(one.get().relativeAbsorbed());
      } else {
        csv.append(",,");
      }
    }
    hours.forEach(hour -> number(light.shadeByHour().get(hour)));
    csv.append("\r\n");
  }

  private void text(String text) {
    boolean quoted = text.matches("(?s).*[,\"\\r\\n].*");
    csv.append(quoted ? '"' + text.replace("\"", "\"\"") + '"' : text).append(',');
  }

  private void number(double value) {
    csv.append(String.format(Locale.ROOT, ",%.4f", value));
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
