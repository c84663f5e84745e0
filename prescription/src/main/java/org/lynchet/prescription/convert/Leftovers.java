package org.lynchet.prescription.convert;

import java.util.ArrayList;
import java.util.List;
import java.util.function.IntPredicate;
import org.lynchet.formats.FeatureTable;
import org.lynchet.prescription.fault.Warning;

/** Warns of what of a table task data has no place for. */
final class Leftovers {
  private Leftovers() {}

  /**
   * Warns of features without an area.
   *
   * @param leftOut how many there are
   * @param why what they cannot be
   */
  static void warn(int leftOut, String why, List<Warning> warnings) {
    if (leftOut > 0) {
      warnings.add(
          new Warning(
              Warning.Code.FEATURES_LEFT_OUT,
              leftOut
                  + (leftOut == 1 ? " feature has" : " features have")
                  + " no area and "
                  + why
                  + "; left out."));
    }
  }

  /**
   * Warns of columns with values that are not taken over.
   *
   * @param isTaken tells by its index whether a column is
   * @param why what there is a place for
   */
  static void warn(FeatureTable table, IntPredicate isTaken, String why, List<Warning> warnings) {
    List<String> left = new ArrayList<>();
    for (int c = 0; c < table.columns().size(); c++) {
      int column = c;
      boolean hasValues =
          table.features().stream().anyMatch(feature -> feature.values().get(column) != null);
      if (hasValues && !isTaken.test(c)) {
        left.add(table.columns().get(c).name());
      }
    }
    if (!left.isEmpty()) {
      warnings.add(
          new Warning(
              Warning.Code.VALUES_LEFT_OUT,
              "Columns were left out, since " + why + ": " + String.join(", ", left) + "."));
    }
  }
}
