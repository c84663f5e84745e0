package org.lynchet.prescription.driving;

import java.util.ArrayList;
import java.util.List;

/**
 * The rows of strips that are all alike, on a field that does not end, to try a way of driving on.
 *
 * @param rows rows of a pass
 * @param passes passes of a strip
 * @param borderLeft border rows on the left side
 * @param borderRight border rows on the right side
 */
record StripShape(int rows, int passes, int borderLeft, int borderRight) {
  private static final int STRIPS = 12;
  private static final double LENGTH = 100;

  /** Whether a chart serves every pass of such strips. */
  boolean isServed(PassOrder order) {
    return LoadingChart.of(order.drive(planted())).serves() == LoadingChart.Serves.EVERY_PASS;
  }

  private List<PlantedPass> planted() {
    List<PlantedPass> planted = new ArrayList<>();
    for (int number = 1; number <= STRIPS * passes; number++) {
      int strip = (number - 1) / passes + 1;
      int before = (number - 1) % passes * rows;
      List<String> products = new ArrayList<>();
      List<Double> lengths = new ArrayList<>();
      for (int row = before; row < before + rows; row++) {
        boolean border = row < borderLeft || row >= passes * rows - borderRight;
        products.add(border ? "border" : "centre");
        lengths.add(LENGTH);
      }
      planted.add(new PlantedPass(number, strip, number, 0, LENGTH, LENGTH, products, lengths));
    }
    return planted;
  }
}
