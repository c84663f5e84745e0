package org.lynchet.prescription.fault;

import java.util.ArrayList;
import java.util.List;
import org.lynchet.formats.Fault;
import org.lynchet.formats.FormatException;

/** Gathers the faults of one run, so that all are reported together. */
public final class Faults {
  private final List<Fault> faults = new ArrayList<>();

  /** Adds one fault; see {@link Fault} for the four texts. */
  public void add(String what, String where, String allowed, String next) {
    faults.add(new Fault(what, where, allowed, next));
  }

  /** Adds all faults of a file that could not be taken. */
  public void addAll(FormatException rejected) {
    faults.addAll(rejected.faults());
  }

  /** Adds all faults of a run that was ended. */
  public void addAll(RejectedException rejected) {
    faults.addAll(rejected.faults());
  }

  /** Whether nothing was wrong so far. */
  public boolean isEmpty() {
    return faults.isEmpty();
  }

  /** What was gathered, in the order of adding. */
  public List<Fault> list() {
    return List.copyOf(faults);
  }

  /**
   * Ends the run if anything was wrong.
   *
   * @throws RejectedException with all that was gathered
   */
  public void throwIfAny() throws RejectedException {
    if (!faults.isEmpty()) {
      throw new RejectedException(faults);
    }
  }
}
