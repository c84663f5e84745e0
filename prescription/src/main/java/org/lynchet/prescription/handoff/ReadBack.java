package org.lynchet.prescription.handoff;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import org.jspecify.annotations.Nullable;
import org.locationtech.jts.geom.Geometry;
import org.lynchet.formats.Column;
import org.lynchet.formats.FeatureTable;

/**
 * Compares a table that was read back with the one that was meant: columns, count, every value to
 * the decimals that the column keeps, every vertex to 1e-9 degree.
 */
final class ReadBack {
  private static final double VERTEX_DEGREES = 1e-9;

  private ReadBack() {}

  /**
   * The differences, empty if there are none.
   *
   * @param exactNumbers whether the format keeps numbers whole rather than to the column's decimals
   */
  static List<String> differences(FeatureTable meant, FeatureTable read, boolean exactNumbers) {
    List<String> found = new ArrayList<>();
    List<String> meantNames = meant.columns().stream().map(Column::name).toList();
    List<String> readNames = read.columns().stream().map(Column::name).toList();
    if (meant.features().isEmpty() && read.features().isEmpty()) {
      return found;
    }
    if (!meantNames.equals(readNames)) {
      found.add("columns " + readNames + " in place of " + meantNames);
      return found;
    }
    if (meant.features().size() != read.features().size()) {
      found.add(read.features().size() + " features in place of " + meant.features().size());
      return found;
    }
    for (int i = 0; i < meant.features().size(); i++) {
      for (int c = 0; c < meantNames.size(); c++) {
        Object wanted = meant.features().get(i).values().get(c);
        Object seen = read.features().get(i).values().get(c);
        if (!isSame(meant.columns().get(c), wanted, seen, exactNumbers)) {
          found.add(
              "feature "
                  + (i + 1)
                  + ", "
                  + meantNames.get(c)
                  + ": "
                  + seen
                  + " in place of "
                  + wanted);
        }
      }
      if (!isSame(meant.features().get(i).geometry(), read.features().get(i).geometry())) {
        found.add("feature " + (i + 1) + ": another geometry");
      }
    }
    return found;
  }

  private static boolean isSame(
      Column column, @Nullable Object wanted, @Nullable Object seen, boolean exactNumbers) {
    if (wanted instanceof Double number && seen instanceof Double other) {
      return exactNumbers
          ? number.equals(other)
          : rounded(number, column).compareTo(rounded(other, column)) == 0;
    }
    return Objects.equals(wanted, seen);
  }

  private static BigDecimal rounded(Double number, Column column) {
    return BigDecimal.valueOf(number).setScale(column.decimals(), RoundingMode.HALF_UP);
  }

  private static boolean isSame(Geometry wanted, Geometry seen) {
    return wanted.norm().equalsExact(seen.norm(), VERTEX_DEGREES);
  }
}
