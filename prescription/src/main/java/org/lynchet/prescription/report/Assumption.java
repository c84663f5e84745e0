package org.lynchet.prescription.report;

/**
 * A number that a forecast goes by.
 *
 * @param what it is
 * @param value as text, with its unit
 * @param source where it is from
 * @param change how to change it
 */
record Assumption(String what, String value, String source, String change) {
  static final String PLAN = "the plan";

  /** One that the plan gives. */
  static Assumption ofPlan(String what, String value, String key) {
    return new Assumption(what, value, PLAN, key);
  }
}
