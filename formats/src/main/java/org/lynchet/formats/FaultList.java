package org.lynchet.formats;

import java.util.ArrayList;
import java.util.List;

/** Gathers the faults of one file in the order they are found, and keeps the first fifty. */
public final class FaultList {
  /** How many faults are told one by one; enough to see what is wrong with a file. */
  public static final int LIMIT = 50;

  private final List<Fault> faults = new ArrayList<>();
  private int more;

  /** Adds one fault; beyond the limit it is only counted. See {@link Fault} for the words. */
  public void add(String what, String where, String allowed, String next) {
    if (faults.size() < LIMIT) {
      faults.add(new Fault(what, where, allowed, next));
    } else {
      more++;
    }
  }

  /** Adds the faults of another file. */
  public void addAll(FormatException other) {
    other.faults().forEach(f -> add(f.what(), f.where(), f.allowed(), f.next()));
  }

  /** Whether nothing was found. */
  public boolean isEmpty() {
    return faults.isEmpty();
  }

  /** Does nothing if nothing was found. */
  public void throwIfAny() throws FormatException {
    if (!isEmpty()) {
      throw toException();
    }
  }

  /** Everything found so far; there must be something. */
  public FormatException toException() {
    List<Fault> all = new ArrayList<>(faults);
    if (more > 0) {
      Fault last = faults.get(faults.size() - 1);
      all.add(
          new Fault(
              "and " + more + " more",
              last.where(),
              "no faults",
              "mend the first ones, try again"));
    }
    return new FormatException(all);
  }
}
