package org.lynchet.prescription.paper;

import java.util.Locale;
import org.lynchet.prescription.machine.Combine;
import org.lynchet.prescription.machine.Machine;
import org.lynchet.prescription.machine.Planter;
import org.lynchet.prescription.machine.Sprayer;
import org.lynchet.prescription.quantity.Length;
import org.lynchet.prescription.quantity.LengthUnit;

/** Says in words how wide a machine is. */
final class MachineText {
  private MachineText() {}

  /** Such as {@code corn-planter: 12 rows of 30 in, 30 ft wide}. */
  static String of(Machine machine, LengthUnit unit) {
    String width = width(machine.workingWidthMetres(), unit);
    if (machine instanceof Planter planter) {
      return planter.name()
          + ": "
          + planter.rows()
          + " rows of "
          + length(planter.rowSpacing())
          + ", "
          + width
          + " wide";
    }
    if (machine instanceof Sprayer sprayer) {
      Length section = sprayer.section();
      return sprayer.name()
          + ": boom "
          + width
          + (section == null ? "" : ", sections " + length(section));
    }
    return machine.name() + ": " + (machine instanceof Combine ? "header " : "") + width;
  }

  /** The same in fewer words, such as {@code corn-planter: 30 ft}. */
  static String brief(Machine machine, LengthUnit unit) {
    return machine instanceof Planter
        ? machine.name() + ": " + width(machine.workingWidthMetres(), unit)
        : of(machine, unit);
  }

  private static String length(Length length) {
    return number(length.amount()) + " " + length.unit().symbol();
  }

  private static String width(double metres, LengthUnit unit) {
    return number(metres / unit.metres()) + " " + unit.symbol();
  }

  /** A number with at most two decimals, none of them needless. */
  static String number(double value) {
    return String.format(Locale.ROOT, "%,.2f", value).replaceAll("\\.?0+$", "");
  }
}
