package org.lynchet.formats.isoxml;

import java.util.List;
import org.lynchet.formats.FaultList;
import org.lynchet.formats.FormatException;
import org.lynchet.formats.XmlElement;

/** Checks that the binary file of a grid is there and as long as the grid says. */
final class GridCheck {
  private static final int BYTES_OF_A_VALUE = 4;

  private final TaskTree tree;
  private final TaskFiles files;
  private final FaultList faults;

  GridCheck(TaskTree tree, TaskFiles files, FaultList faults) {
    this.tree = tree;
    this.files = files;
    this.faults = faults;
  }

  /** Checks the grids of a task. */
  void check(XmlElement task) throws FormatException {
    List<XmlElement> grids = task.children("GRD");
    if (grids.size() > 1) {
      fault(grids.get(1), "a second grid", "one grid in a task");
    }
    for (XmlElement grid : grids) {
      check(task, grid);
    }
  }

  private void check(XmlElement task, XmlElement grid) throws FormatException {
    String name = grid.attribute("G");
    byte[] cells = name.matches("GRD[0-9]{5}") ? files.find(name + ".bin") : null;
    if (cells == null) {
      fault(grid, "the file of grid '" + name + "' is missing", name + ".bin beside TASKDATA.XML");
      return;
    }
    long columns = IsoNumbers.whole(grid, "E", 0);
    long rows = IsoNumbers.whole(grid, "F", 0);
    long cellBytes = grid.attribute("I").equals("1") ? 1 : cellBytes(task, grid);
    if (cellBytes > 0 && (double) columns * rows * cellBytes != cells.length) {
      fault(
          grid,
          name + ".bin has " + cells.length + " bytes",
          columns + " columns x " + rows + " rows x " + cellBytes + " bytes");
    }
    if (grid.attribute("I").equals("1")) {
      checkCodes(task, grid, cells);
    }
  }

  /** Type 2 has a value of four bytes for each process data value of the zone that it names. */
  private long cellBytes(XmlElement task, XmlElement grid) {
    String code = grid.attribute("J");
    for (XmlElement zone : task.children("TZN")) {
      if (zone.attribute("A").equals(code)) {
        if (zone.children("PDV").isEmpty()) {
          fault(
              grid, "it takes its values from zone " + code + ", which has none", "a value (PDV)");
        }
        return (long) BYTES_OF_A_VALUE * zone.children("PDV").size();
      }
    }
    fault(grid, "it takes its values from zone '" + code + "'", "a zone (TZN) of the task");
    return 0;
  }

  private void checkCodes(XmlElement task, XmlElement grid, byte[] cells) {
    boolean[] known = new boolean[256];
    for (XmlElement zone : task.children("TZN")) {
      long code = IsoNumbers.whole(zone, "A", 255);
      known[(int) (code & 0xFF)] = true;
    }
    for (byte cell : cells) {
      if (!known[cell & 0xFF]) {
        fault(grid, "a cell of zone " + (cell & 0xFF), "codes of zones (TZN) of the task");
        return;
      }
    }
  }

  private void fault(XmlElement grid, String what, String allowed) {
    faults.add(what, tree.where(grid), allowed, "export the task data again");
  }
}
