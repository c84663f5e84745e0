package org.lynchet.prescription.plan;

import org.lynchet.prescription.fault.Faults;

/** Gathers faults of a plan file with their line, column and key. */
final class PlanFaults {
  private final String file;
  private final Faults faults;

  PlanFaults(String file, Faults faults) {
    this.file = file;
    this.faults = faults;
  }

  /** The plan file's path as given. */
  String file() {
    return file;
  }

  /** Adds a fault at a value. */
  void at(PlanNode node, String key, String what, String allowed, String next) {
    at(node.line(), node.column(), key, what, allowed, next);
  }

  /** Adds a fault at a place. */
  void at(int line, int column, String key, String what, String allowed, String next) {
    String place = file + ":" + line + ":" + column;
    faults.add(what, key.isEmpty() ? place : place + " " + key, allowed, next);
  }

  /** Adds a fault of the whole file. */
  void whole(String what, String allowed, String next) {
    faults.add(what, file, allowed, next);
  }

  /** How many faults there are, to tell later whether more came. */
  int count() {
    return faults.list().size();
  }
}
