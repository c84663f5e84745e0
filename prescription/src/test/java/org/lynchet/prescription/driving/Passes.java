package org.lynchet.prescription.driving;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;

/** Passes for tests, side by side and as long as one another. */
final class Passes {
  private Passes() {}

  /** Passes that plant one product, a row each. */
  static List<PlantedPass> plain(int passes, double widthMetres, double lengthMetres) {
    List<PlantedPass> made = new ArrayList<>();
    for (int number = 1; number <= passes; number++) {
      made.add(pass(number, number, (number - 0.5) * widthMetres, lengthMetres, "c"));
    }
    return made;
  }

  /** Strips alike, drawn one letter a row, passes apart by a bar: {@code bccc|cccb}. */
  static List<PlantedPass> strips(int strips, String drawn) {
    List<PlantedPass> made = new ArrayList<>();
    for (int strip = 1; strip <= strips; strip++) {
      made.addAll(strip(strip, made.size() + 1, drawn));
    }
    return made;
  }

  /** One strip; its first pass has that number. */
  static List<PlantedPass> strip(int strip, int firstNumber, String drawn) {
    List<PlantedPass> made = new ArrayList<>();
    for (String rows : List.of(drawn.split("\\|"))) {
      int number = firstNumber + made.size();
      made.add(pass(number, strip, number * 10.0, 100, rows));
    }
    return made;
  }

  private static PlantedPass pass(
      int number, int strip, double centre, double length, String rows) {
    return new PlantedPass(
        number,
        strip,
        centre,
        0,
        length,
        length,
        List.of(rows.split("")),
        Collections.nCopies(rows.length(), length));
  }

  /** A chart drawn in the same way. */
  static String drawn(LoadingChart chart) {
    return String.join("", chart.products());
  }
}
