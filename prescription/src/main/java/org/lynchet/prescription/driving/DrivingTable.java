package org.lynchet.prescription.driving;

import java.util.Locale;
import org.lynchet.prescription.quantity.AreaUnit;

/** Shows how a field is driven as a short table of at most 100 columns. */
public final class DrivingTable {
  private static final int NAME = 20;

  private DrivingTable() {}

  /**
   * The table; each line ends with a line feed.
   *
   * @param area acres, with miles beside them, or hectares, with kilometres
   */
  public static String of(Driving driving, AreaUnit area) {
    Distances distances = Distances.beside(area);
    StringBuilder text = new StringBuilder();
    text.append(
        String.format(
            Locale.ROOT,
            "%-20s %-12s %6s %9s %8s %6s %10s %8s %6s %6s%n",
            "DRIVING (ESTIMATE)",
            "CROP",
            "PASSES",
            "IN ROW " + distances.farSymbol(),
            "HOURS",
            "LOOPS",
            "TURNING " + distances.farSymbol(),
            "HOURS",
            "IN ROW",
            area.symbol() + "/h"));
    for (CropDriving one : driving.all()) {
      DrivingPlan plan = one.chosen();
      text.append(
          String.format(
              Locale.ROOT,
              "%-20s %-12s %6d %9.2f %8.2f %6d %10.2f %8.2f %6s %6.1f%n",
              cut(one.machineName(), NAME),
              cut(one.crop(), 12),
              plan.trips().size(),
              distances.far(plan.inRowMetres()),
              plan.inRowHours(),
              plan.loops(),
              distances.far(plan.turningMetres()),
              plan.turningHours(),
              String.format(Locale.ROOT, "%.1f%%", plan.shareInRow() * 100),
              one.capacitySquareMetresPerHour() / area.squareMetres()));
    }
    return text.toString().replace(System.lineSeparator(), "\n");
  }

  private static String cut(String name, int width) {
    return name.length() <= width ? name : name.substring(0, width - 1) + "…";
  }
}
