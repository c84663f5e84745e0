package org.lynchet.prescription.plan;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.lynchet.formats.Fault;
import org.lynchet.prescription.fault.Faults;

/** Gathers the faults of a plan file, each with its line, column and key. */
final class PlanFaults {
  private record Placed(int line, int column, Fault fault) {}

  private final String file;
  private final List<Placed> faults = new ArrayList<>();

  PlanFaults(String file) {
    this.file = file;
  }

  /** The plan file's path as given. */
  String file() {
    return file;
  }

  /** Adds a fault at a place. */
  void add(Place place, String what, String allowed, String next) {
    add(place.line(), place.column(), where(place), what, allowed, next);
  }

  /** A place in words: file, line, column and key. */
  String where(Place place) {
    String where = file + ":" + place.line() + ":" + place.column();
    return place.path().isEmpty() ? where : where + " " + place.path();
  }

  /** Adds a fault of the whole file. */
  void addWhole(String what, String allowed, String next) {
    add(0, 0, file, what, allowed, next);
  }

  private void add(int line, int column, String where, String what, String allowed, String next) {
    faults.add(new Placed(line, column, new Fault(what, where, allowed, next)));
  }

  /** Whether nothing was wrong so far. */
  boolean isEmpty() {
    return faults.isEmpty();
  }

  /** Adds all faults to others, in the order in which they stand in the file. */
  void addTo(Faults all) {
    faults.stream()
        .sorted(Comparator.comparingInt(Placed::line).thenComparingInt(Placed::column))
        .map(Placed::fault)
        .forEach(fault -> all.add(fault.what(), fault.where(), fault.allowed(), fault.next()));
  }
}
