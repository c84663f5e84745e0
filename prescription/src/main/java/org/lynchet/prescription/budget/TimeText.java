package org.lynchet.prescription.budget;

import org.lynchet.prescription.driving.FieldTime;

/** Tells how much longer machines drive in strips. */
final class TimeText {
  private TimeText() {}

  static void add(FieldBudget field, TextLines text) {
    text.line(
        "%-20s %-12s %12s %12s %10s %8s %12s",
        "DRIVING h (ESTIMATE)", "CROP", "IN STRIPS", "IN BLOCKS", "MORE", "TIMES", "SEASON");
    for (FieldTime time : field.times()) {
      int trips = field.trips(time);
      text.line(
          "%-20s %-12s %12.2f %12.2f %+10.2f %8d %+12.2f",
          TextLines.cut(time.machine(), 20),
          TextLines.cut(time.crop(), 12),
          time.stripHours(),
          time.blockHours(),
          time.moreHours() + 0.0,
          trips,
          time.moreHours() * trips + 0.0);
    }
    text.wrap(
        "Rows, gaps and turns. Filling, waiting and unloading are taken to be alike; unloading at"
            + " the ends only takes longer: name it among extra-costs.");
    if (field.strips().facts().machineCost() == null) {
      text.line("Without budget.machine-cost an hour costs nothing here.");
    }
    text.line("");
  }
}
