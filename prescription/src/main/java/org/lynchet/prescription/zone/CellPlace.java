package org.lynchet.prescription.zone;

import org.lynchet.geometry.coverage.Cell;
import org.lynchet.geometry.strip.Bands;

/** Tells which strip and which pass a cell lies in. */
final class CellPlace {
  private CellPlace() {}

  /** The number of its strip; 0 in the headland. */
  static int strip(Bands bands, Cell cell) {
    return cell.band() == Cell.NO_BAND ? 0 : bands.get(cell.band()).strip();
  }

  /** The number of its pass; -1 in the headland and where it may run over several. */
  static int pass(Bands bands, Cell cell) {
    int pass = cell.band() == Cell.NO_BAND ? 0 : bands.get(cell.band()).pass();
    return pass == 0 ? -1 : pass;
  }
}
