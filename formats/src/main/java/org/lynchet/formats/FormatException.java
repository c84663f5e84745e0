package org.lynchet.formats;

import java.util.List;

/** Says that a file cannot be taken, with every fault found in it. */
public final class FormatException extends Exception {
  private static final long serialVersionUID = 1L;

  private final List<Fault> faults;

  /** Takes all faults of one file, at least one. */
  public FormatException(List<Fault> faults) {
    super(faults.get(0).where() + ": " + faults.get(0).what());
    this.faults = List.copyOf(faults);
  }

  /** Takes the only fault. */
  public FormatException(Fault fault) {
    this(List.of(fault));
  }

  /** The faults, in the order in which they stand in the file. */
  public List<Fault> faults() {
    return faults;
  }
}
