package org.lynchet.prescription.handoff;

import java.util.List;

/** Says that files did not read back as they were meant; none of them was kept. */
public final class HandoffException extends Exception {
  private static final long serialVersionUID = 1L;

  private final List<String> differences;

  /** Takes every difference, at least one. */
  public HandoffException(List<String> differences) {
    super("What was written does not read back as meant: " + differences);
    this.differences = List.copyOf(differences);
  }

  /** Every difference found, with the file's name. */
  public List<String> differences() {
    return differences;
  }
}
