package org.lynchet.integration.witness;

/**
 * One thing that a witness found wrong.
 *
 * @param rule the rule that is broken; its constant says where it is published
 * @param where the file and the place in it
 * @param what what was seen, and what was expected
 */
public record Finding(Enum<?> rule, String where, String what) {

  @Override
  public String toString() {
    return rule + " at " + where + ": " + what;
  }
}
