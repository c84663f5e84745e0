package org.lynchet.prescription.light;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.SortedSet;
import java.util.TreeSet;

/**
 * Divides the season, from the first planting to the last maturity, into runs of days, none of
 * which reaches over the end of a month or of a crop's season.
 */
final class SeasonDays {
  /**
   * Some days that one cross-section stands for.
   *
   * @param middle their middle, in days since 1970-01-01
   * @param days how many
   */
  record Run(double middle, int days) {
    /** The date in which the middle lies. */
    LocalDate date() {
      return LocalDate.ofEpochDay((long) Math.floor(middle));
    }
  }

  private SeasonDays() {}

  static List<Run> of(List<CanopyRow> rows, int longest) {
    SortedSet<Long> breaks = new TreeSet<>();
    rows.stream()
        .map(CanopyRow::canopy)
        .filter(Objects::nonNull)
        .forEach(
            canopy -> {
              breaks.add(canopy.planting().toEpochDay());
              breaks.add(canopy.maturity().toEpochDay());
            });
    LocalDate month = LocalDate.ofEpochDay(breaks.first()).withDayOfMonth(1).plusMonths(1);
    for (; month.toEpochDay() < breaks.last(); month = month.plusMonths(1)) {
      breaks.add(month.toEpochDay());
    }
    List<Run> runs = new ArrayList<>();
    long from = breaks.first();
    for (long to : breaks.tailSet(from + 1)) {
      divide(from, to, longest, runs);
      from = to;
    }
    return runs;
  }

  private static void divide(long from, long to, int longest, List<Run> runs) {
    long pieces = (to - from + longest - 1) / longest;
    long begin = from;
    for (long piece = 1; piece <= pieces; piece++) {
      long end = from + (to - from) * piece / pieces;
      runs.add(new Run((begin + end) / 2.0, (int) (end - begin)));
      begin = end;
    }
  }
}
