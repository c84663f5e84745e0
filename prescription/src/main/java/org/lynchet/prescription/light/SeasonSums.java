package org.lynchet.prescription.light;

import java.util.ArrayList;
import java.util.List;

/** Adds up what rows get, by month and by hour, each over the season of its own crop. */
final class SeasonSums {
  private static final int MONTHS = 12;
  private static final int HOURS = 24;

  /** Watt-hours to megajoules. */
  private static final double MEGAJOULES = 0.0036;

  private final List<CanopyRow> rows;
  private final double[][] absorbed;
  private final double[][] incident;
  private final double[][] absorbedInBlock;
  private final double[][] incidentInBlock;
  private final double[][] shadedHours;
  private final double[][] sunnyHours;
  private final boolean[] inSeason;
  private final List<Integer> months = new ArrayList<>();
  private final double periodMetres;
  private double total;
  private double stopped;
  private double ground;
  private int month;

  SeasonSums(List<CanopyRow> rows) {
    this.rows = rows;
    int count = rows.size();
    absorbed = new double[MONTHS][count];
    incident = new double[MONTHS][count];
    absorbedInBlock = new double[MONTHS][count];
    incidentInBlock = new double[MONTHS][count];
    shadedHours = new double[HOURS][count];
    sunnyHours = new double[HOURS][count];
    inSeason = new boolean[count];
    periodMetres = rows.stream().mapToDouble(CanopyRow::spacingMetres).sum();
  }

  /** Begins a run of days. */
  void begin(SeasonDays.Run run) {
    month = run.date().getMonthValue() - 1;
    if (!months.contains(month)) {
      months.add(month);
    }
    for (int i = 0; i < inSeason.length; i++) {
      CanopyTraits canopy = rows.get(i).canopy();
      inSeason[i] =
          canopy != null && canopy.firstDay() <= run.middle() && run.middle() < canopy.lastDay();
    }
  }

  /** Adds light of so much energy on level ground. */
  void add(double energy, Receipts receipts, WideBlocks blocks) {
    total += energy * periodMetres;
    ground += receipts.ground();
    for (int i = 0; i < inSeason.length; i++) {
      stopped += receipts.absorbed[i];
      if (inSeason[i]) {
        absorbed[month][i] += receipts.absorbed[i];
        incident[month][i] += receipts.incident[i];
        absorbedInBlock[month][i] += blocks.absorbed(i);
        incidentInBlock[month][i] += energy * rows.get(i).spacingMetres();
      }
    }
  }

  /** Adds light of the sun, and notes the shade in an hour of the day. */
  void addBeam(double energy, Receipts receipts, WideBlocks blocks, int hour, double hours) {
    add(energy, receipts, blocks);
    for (int i = 0; i < inSeason.length; i++) {
      if (inSeason[i]) {
        shadedHours[hour][i] += receipts.shaded[i] / rows.get(i).spacingMetres() * hours;
        sunnyHours[hour][i] += hours;
      }
    }
  }

  LightResult result(LightRequest request) {
    List<RowLight> lights = new ArrayList<>();
    for (int i = 0; i < inSeason.length; i++) {
      if (rows.get(i).canopy() != null) {
        lights.add(light(i));
      }
    }
    return new LightResult(
        request,
        lights,
        new LightResult.Budget(total * MEGAJOULES, stopped * MEGAJOULES, ground * MEGAJOULES));
  }

  private RowLight light(int row) {
    double season = sum(absorbedInBlock, row);
    List<RowLight.Month> byMonth = new ArrayList<>();
    for (int m : months) {
      if (incidentInBlock[m][row] > 0) {
        byMonth.add(
            new RowLight.Month(
                m + 1,
                incident[m][row] / incidentInBlock[m][row],
                absorbed[m][row] / absorbedInBlock[m][row],
                absorbedInBlock[m][row] / season));
      }
    }
    List<Double> shade = new ArrayList<>();
    for (int hour = 0; hour < HOURS; hour++) {
      double sunny = sunnyHours[hour][row];
      shade.add(sunny == 0 ? 0 : Math.min(1, shadedHours[hour][row] / sunny));
    }
    return new RowLight(
        rows.get(row),
        sum(incident, row) / sum(incidentInBlock, row),
        sum(absorbed, row) / season,
        byMonth,
        shade);
  }

  private static double sum(double[][] byMonth, int row) {
    double sum = 0;
    for (double[] rows : byMonth) {
      sum += rows[row];
    }
    return sum;
  }
}
