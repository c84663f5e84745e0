package org.lynchet.prescription.plan;

import java.time.DateTimeException;
import java.time.LocalDate;
import java.util.Optional;
import org.lynchet.prescription.plan.PlanNode.Scalar;

/** Reads dates: year-month-day, of the years that all formats can hold. */
final class DateText {
  private DateText() {}

  static Optional<LocalDate> read(PlanNode node, PlanFaults faults) {
    if (node instanceof Scalar scalar && scalar.text().matches("[0-9]{4}-[0-9]{2}-[0-9]{2}")) {
      try {
        LocalDate date = LocalDate.parse(scalar.text());
        if (date.getYear() >= 1900 && date.getYear() <= 2155) {
          return Optional.of(date);
        }
      } catch (DateTimeException noSuchDay) {
        // Told below, like a year that the formats cannot hold.
      }
    }
    faults.add(
        node.place(),
        node.kind() + " is not a date",
        "year-month-day, 1900-01-01 to 2155-12-31",
        "write it like 2027-04-20");
    return Optional.empty();
  }
}
