package org.lynchet.integration.witness;

import java.util.ArrayList;
import java.util.List;

/** Gathers findings in the order in which they are met. */
public final class Findings {
  private final List<Finding> list = new ArrayList<>();

  /** Adds one finding; see {@link Finding}. */
  public void add(Enum<?> rule, String where, String what) {
    list.add(new Finding(rule, where, what));
  }

  /** Adds a finding that two values differ, unless they are equal. */
  public void addUnlessEqual(Enum<?> rule, String where, Object seen, Object expected) {
    if (!seen.equals(expected)) {
      add(rule, where, "is " + seen + ", expected " + expected);
    }
  }

  /** What was gathered so far. */
  public List<Finding> list() {
    return List.copyOf(list);
  }
}
