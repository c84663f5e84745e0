package org.lynchet.prescription.budget;

import java.util.Locale;

/** The parts of a partial budget, in their order. */
public enum BudgetPart {
  ADDED_RETURNS,
  REDUCED_COSTS,
  REDUCED_RETURNS,
  ADDED_COSTS;

  /** The part in words. */
  public String words() {
    return key().replace('-', ' ');
  }

  /** The part in files. */
  public String key() {
    return name().toLowerCase(Locale.ROOT).replace('_', '-');
  }
}
