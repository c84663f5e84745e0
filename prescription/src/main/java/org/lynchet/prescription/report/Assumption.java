package org.lynchet.prescription.report;

import java.util.ArrayList;
import java.util.List;

/**
 * A number, or another thing, that a forecast goes by.
 *
 * @param what it is
 * @param value as text, with its unit
 * @param source where it is from
 * @param change how to change it
 */
record Assumption(String what, String value, String source, String change) {
  static final String PLAN = "the plan";

  /** What no key of the plan changes. */
  static final String FIXED = "fixed in the model";

  private static final String AND = " / ";

  /** One that the plan gives. */
  static Assumption ofPlan(String what, String value, String key) {
    return new Assumption(what, value, PLAN, key);
  }

  /**
   * Joins neighbours from the same source to one.
   *
   * @param all with names of parts of one thing
   * @param whole that thing, which stands before the names
   * @param change how to change them; empty to join their own
   */
  static List<Assumption> joined(List<Assumption> all, String whole, String change) {
    List<Assumption> joined = new ArrayList<>();
    for (Assumption one : all) {
      int last = joined.size() - 1;
      if (last >= 0 && joined.get(last).source().equals(one.source())) {
        joined.set(last, joined.get(last).and(one));
      } else {
        joined.add(one);
      }
    }
    return joined.stream()
        .map(
            one ->
                new Assumption(
                    whole + one.what(),
                    one.value(),
                    one.source(),
                    change.isEmpty() ? one.change() : change))
        .toList();
  }

  private Assumption and(Assumption other) {
    return new Assumption(
        what + AND + other.what, value + AND + other.value, source, change + ", " + other.change);
  }
}
