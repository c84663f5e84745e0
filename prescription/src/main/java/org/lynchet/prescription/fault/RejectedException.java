package org.lynchet.prescription.fault;

import java.util.List;
import org.lynchet.formats.Fault;

/** Says that a plan or its data cannot be used, with every fault found. */
public final class RejectedException extends Exception {
  private static final long serialVersionUID = 1L;

  private final List<Fault> faults;

  /** Takes all faults of a run, at least one. */
  public RejectedException(List<Fault> faults) {
    super(faults.get(0).where() + ": " + faults.get(0).what());
    this.faults = List.copyOf(faults);
  }

  /** The faults, in the order in which they were found. */
  public List<Fault> faults() {
    return faults;
  }
}
