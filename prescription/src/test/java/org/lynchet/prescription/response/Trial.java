package org.lynchet.prescription.response;

/**
 * One published result of corn in strips, as a change against the same crop in a block.
 *
 * @param study where it is from
 * @param rows rows of 30 in of each strip
 * @param latitude about, degrees
 * @param direction of the rows; null where the source does not say
 * @param part what was weighed
 * @param low the lowest published change, per cent
 * @param high the highest
 * @param dry whether it was a drought
 * @param note what makes the comparison doubtful; empty for nothing
 */
record Trial(
    String study,
    int rows,
    double latitude,
    Direction direction,
    Part part,
    double low,
    double high,
    boolean dry,
    String note) {

  enum Direction {
    EAST_WEST("E-W", 90),
    NORTH_SOUTH("N-S", 0),
    NOT_TOLD("?", Double.NaN);

    final String text;
    final double heading;

    Direction(String text, double heading) {
      this.text = text;
      this.heading = heading;
    }
  }

  /** What was weighed; the first row of a strip is its north row or its west row. */
  enum Part {
    CORN_FIRST("corn, N or W outside row"),
    CORN_LAST("corn, S or E outside row"),
    CORN_OUTER("corn, outside rows"),
    CORN("corn, whole strip"),
    SOYBEAN_FIRST("soybean, N or W outside row"),
    SOYBEAN_LAST("soybean, S or E outside row"),
    SOYBEAN_OUTER("soybean, outside rows"),
    SOYBEAN("soybean, whole strip"),
    LAND("land equivalent ratio, change from 1");

    final String text;

    Part(String text) {
      this.text = text;
    }
  }
}
