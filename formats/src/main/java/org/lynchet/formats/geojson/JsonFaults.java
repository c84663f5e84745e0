package org.lynchet.formats.geojson;

import org.lynchet.formats.FaultList;

/** Gathers the faults of one GeoJSON file, each with its line, column and path. */
final class JsonFaults {
  private final String file;
  private final FaultList faults = new FaultList();

  JsonFaults(String file) {
    this.file = file;
  }

  /**
   * Adds a fault.
   *
   * @param path from the top of the file; empty at the top
   */
  void add(String what, JsonSpot spot, String path, String allowed) {
    String at = file + ", line " + spot.line() + ", column " + spot.column();
    faults.add(
        what, path.isEmpty() ? at : at + ", " + path, allowed, "mend it, or export it again");
  }

  FaultList list() {
    return faults;
  }
}
