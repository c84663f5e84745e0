package org.lynchet.prescription.compare;

import java.util.ArrayList;
import java.util.List;
import org.lynchet.prescription.defaults.Defaults;

/** Lists the headings that are tried, as turns of the plan's AB line. */
final class Headings {
  /** Headings within this of each other are the same: no row's light differs by what counts. */
  static final double SAME_DEGREES = 1;

  private static final List<Double> ALWAYS = Defaults.get().numbers("compare.headings-degrees");

  private Headings() {}

  /**
   * By how much the line is turned, (-90, 90]: first not at all, then to east-west and north-south,
   * then to further headings. Of a heading and its opposite, along which the rows are the same, the
   * nearer one is taken: left stays left.
   *
   * @param headingDegrees the heading of the plan's line
   * @param furtherDegrees headings that the plan lists
   */
  static List<Double> turns(double headingDegrees, List<Double> furtherDegrees) {
    List<Double> wanted = new ArrayList<>(ALWAYS);
    wanted.addAll(furtherDegrees);
    List<Double> turns = new ArrayList<>();
    turns.add(0.0);
    for (double heading : wanted) {
      double turn = heading - headingDegrees;
      double nearer = turn - 180 * Math.ceil(turn / 180 - 0.5);
      if (turns.stream().noneMatch(other -> isSame(other, nearer))) {
        turns.add(nearer);
      }
    }
    return turns;
  }

  private static boolean isSame(double a, double b) {
    double apart = Math.abs(a - b);
    return Math.min(apart, 180 - apart) <= SAME_DEGREES;
  }
}
