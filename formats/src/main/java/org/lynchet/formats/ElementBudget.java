package org.lynchet.formats;

/** Counts the elements of texts that are read together, so that their memory is limited as one. */
public final class ElementBudget {
  /** The most elements: a million vertices and what is around them. */
  public static final int MOST = 1_500_000;

  private int taken;

  /** Begins a budget with nothing taken. */
  public ElementBudget() {}

  /** Takes one element; whether there was room for it. */
  boolean take() {
    return taken++ < MOST;
  }
}
