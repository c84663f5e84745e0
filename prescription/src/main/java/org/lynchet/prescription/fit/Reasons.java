package org.lynchet.prescription.fit;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.lynchet.prescription.quantity.Count;
import org.lynchet.prescription.quantity.LengthUnit;

/** Says in words how machines do on a candidate. */
final class Reasons {
  private static final double MILLIMETRES = 1000;

  private final LengthUnit unit;

  /**
   * Gets ready to speak.
   *
   * @param unit feet, with inches for what is short; or metres, with millimetres
   */
  Reasons(LengthUnit unit) {
    this.unit = unit;
  }

  List<String> of(List<MachineFit> machines, boolean equalWidths, List<String> unevenBooms) {
    List<String> reasons = new ArrayList<>();
    machines.forEach(machine -> misfit(machine, reasons));
    if (reasons.isEmpty()) {
      reasons.add(
          machines.isEmpty()
              ? "the plan names no machine besides planters"
              : "every machine works in whole passes");
    }
    machines.forEach(machine -> cautions(machine, reasons));
    if (!equalWidths) {
      reasons.add("strips of different widths: crops cannot change places");
    }
    if (machines.stream().anyMatch(machine -> !machine.openSections().isEmpty())
        || !unevenBooms.isEmpty()) {
      reasons.add(
          unevenBooms.isEmpty()
              ? "the period is a whole number of booms: one set of spray lines serves the field"
              : "the period is no whole number of booms of "
                  + String.join(", ", unevenBooms)
                  + ": each crop has its own spray lines");
    }
    return reasons;
  }

  private void misfit(MachineFit fit, List<String> reasons) {
    double mismatch = fit.mismatchMillimetresPerPass();
    if (!fit.fits()) {
      String rule = rule(fit);
      String rows =
          fit.rowsLeftOver() == 0 ? "" : ", " + Count.of(fit.rowsLeftOver(), "row") + " left over";
      reasons.add(rule + " by " + length(Math.abs(mismatch)) + " a pass" + rows);
    }
  }

  /** The rule that cuts a machine that does not fit. */
  static String rule(MachineFit fit) {
    String what =
        fit.mismatchMillimetresPerPass() < 0
            ? " falls short of the strip in "
            : fit.passes() == 1 ? " reaches over the crop beside " : " overlaps in ";
    return fit.machine() + what + fit.crop();
  }

  private static void cautions(MachineFit fit, List<String> reasons) {
    if (!fit.harvests() && fit.wheelsOnRows() > 0) {
      reasons.add(
          String.format(
              Locale.ROOT,
              "%s runs %d of %d wheels on rows of %s",
              fit.machine(),
              fit.wheelsOnRows(),
              fit.wheels(),
              fit.crop()));
    }
    if (fit.wheelsInOtherCrop() > 0) {
      reasons.add(
          String.format(
              Locale.ROOT,
              "%s runs %d of %d wheels in the crop beside %s",
              fit.machine(),
              fit.wheelsInOtherCrop(),
              fit.wheels(),
              fit.crop()));
    }
    if (fit.shutOverOther() > 0) {
      reasons.add(
          String.format(
              Locale.ROOT,
              "%s holds %s over the crop beside %s",
              fit.machine(),
              Count.of(fit.shutOverOther(), "shut section"),
              fit.crop()));
    }
  }

  /** A small length: inches, or feet from two feet on; millimetres, or metres from one on. */
  String length(double millimetres) {
    double metres = millimetres / MILLIMETRES;
    if (unit == LengthUnit.FOOT) {
      double feet = metres / LengthUnit.FOOT.metres();
      return feet < 2
          ? String.format(Locale.ROOT, "%.1f in", metres / LengthUnit.INCH.metres())
          : String.format(Locale.ROOT, "%.2f ft", feet);
    }
    return metres < 1
        ? String.format(Locale.ROOT, "%.1f mm", millimetres)
        : String.format(Locale.ROOT, "%.3f m", metres);
  }
}
