package org.lynchet.prescription.workflow;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import org.lynchet.prescription.defaults.Defaults;
import org.lynchet.prescription.fault.Faults;
import org.lynchet.prescription.fault.RejectedException;
import org.lynchet.prescription.light.CanopyRow;
import org.lynchet.prescription.light.CanopyTraits;
import org.lynchet.prescription.light.DayShade;
import org.lynchet.prescription.light.LightCsv;
import org.lynchet.prescription.light.LightRequest;
import org.lynchet.prescription.picture.LightChart;
import org.lynchet.prescription.response.PlanForecast;

/** Writes a forecast's light as files: light.csv and charts. */
public final class LightFiles {
  /** The first file, by whose name what a run sets aside is known. */
  public static final String FIRST = "light.csv";

  private static final int MOST_DATES = 3;

  private final PlanForecast forecast;
  private final FolderFiles files;
  private final boolean png;
  private final List<LocalDate> dates;

  private LightFiles(PlanForecast forecast, FolderFiles files, boolean png, List<LocalDate> dates) {
    this.forecast = forecast;
    this.files = files;
    this.png = png;
    this.dates = dates;
  }

  /**
   * Checks what will be written.
   *
   * @param folder where to; it is made if it is not there
   * @param force whether files of the same names are replaced
   * @param png whether charts are drawn as PNG too
   * @param dates one to three days of the shade picture; empty for 40, 60 and 80 % of the season
   * @throws RejectedException if files are there, or a day is not of the season
   */
  public static LightFiles prepared(
      PlanForecast forecast, Path folder, boolean force, boolean png, List<LocalDate> dates)
      throws RejectedException {
    List<String> names = new ArrayList<>(List.of(FIRST, "light-rows.svg", "light-shade.svg"));
    if (png) {
      names.addAll(List.of("light-rows.png", "light-shade.png"));
    }
    Faults faults = new Faults();
    FolderFiles files = new FolderFiles(folder, names);
    files.checkPlaces(force, faults);
    check(forecast.light().request(), dates, faults);
    faults.throwIfAny();
    return new LightFiles(
        forecast, files, png, dates.isEmpty() ? usualDates(forecast.light().request()) : dates);
  }

  private static void check(LightRequest request, List<LocalDate> dates, Faults faults) {
    if (dates.size() > MOST_DATES) {
      faults.add(
          dates.size() + " days of the shade picture",
          "--dates",
          "1 to " + MOST_DATES + " days, which fit on a page",
          "leave some out");
    }
    LocalDate first = season(request).planting();
    LocalDate last = season(request).maturity();
    for (LocalDate date : dates) {
      if (date.isBefore(first) || date.isAfter(last)) {
        faults.add(
            date + " is not of the season",
            "--dates",
            first + " to " + last,
            "choose a day of the season; forecast.canopies sets its year");
      }
    }
  }

  /** The season of the tallest canopy. */
  private static CanopyTraits season(LightRequest request) {
    return request.rows().stream()
        .map(CanopyRow::canopy)
        .filter(Objects::nonNull)
        .reduce((a, b) -> b.heightMetres() > a.heightMetres() ? b : a)
        .orElseThrow();
  }

  private static List<LocalDate> usualDates(LightRequest request) {
    CanopyTraits season = season(request);
    long days = season.maturity().toEpochDay() - season.planting().toEpochDay();
    List<LocalDate> dates = new ArrayList<>();
    for (double share : Defaults.get().numbers("forecast.shade-days")) {
      dates.add(season.planting().plusDays(Math.round(share * days)));
    }
    return dates;
  }

  /**
   * Writes the files; each takes its place only when all are whole.
   *
   * @return their names
   * @throws RejectedException if the file system refuses; all is as it was
   */
  public List<String> write() throws RejectedException {
    return files.write(this::draw);
  }

  private void draw(Path draft) throws IOException {
    LightRequest request = forecast.light().request();
    String field = forecast.plan().field().name();
    List<DayShade> days = dates.stream().map(date -> DayShade.of(request, date)).toList();
    LightChart rows = LightChart.ofRows(forecast.light(), field);
    LightChart shade = LightChart.ofDays(days, request.headingDegrees(), field);
    Files.writeString(draft.resolve(FIRST), LightCsv.of(forecast.light()), StandardCharsets.UTF_8);
    rows.writeSvg(draft.resolve("light-rows.svg"));
    shade.writeSvg(draft.resolve("light-shade.svg"));
    if (png) {
      rows.writePng(draft.resolve("light-rows.png"));
      shade.writePng(draft.resolve("light-shade.png"));
    }
  }
}
