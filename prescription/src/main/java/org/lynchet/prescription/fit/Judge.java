package org.lynchet.prescription.fit;

import java.util.ArrayList;
import java.util.List;
import org.lynchet.prescription.fit.FitRequest.Implement;
import org.lynchet.prescription.fit.FitRequest.StripChoice;
import org.lynchet.prescription.fit.FitRequest.Tracks;
import org.lynchet.prescription.fit.FitRequest.Work;
import org.lynchet.prescription.swath.Swath;
import org.lynchet.prescription.swath.Swaths;

/** Works out what one machine does on a strip of a certain width. */
final class Judge {
  private final Implement machine;
  private final StripChoice strip;
  private final int rows;
  private final Swaths swaths;

  private Judge(Implement machine, StripChoice strip, int planterPasses, long tolerance) {
    this.machine = machine;
    this.strip = strip;
    this.rows = planterPasses * strip.rows();
    this.swaths = Swaths.nearest(machine.steered(), planterPasses * strip.passWidth(), tolerance);
  }

  /**
   * Judges a machine on a strip: the passes whose mismatch is least.
   *
   * @param tolerance how much the mismatch may be for each pass, in 0.1 mm
   */
  static MachineFit of(Implement machine, StripChoice strip, int planterPasses, long tolerance) {
    return new Judge(machine, strip, planterPasses, tolerance).judge(tolerance);
  }

  private MachineFit judge(long tolerance) {
    List<Swath> passes = swaths.passes();
    List<Integer> rowsPerPass = rowsPerPass();
    List<Long> wheels = wheels();
    return new MachineFit(
        machine.name(),
        strip.crop(),
        passes.size(),
        swaths.mismatchMillimetresPerPass(),
        rowsPerPass,
        rows - rowsPerPass.stream().mapToInt(Integer::intValue).sum(),
        machine.section() == null ? List.of() : passes.stream().map(Swath::openSections).toList(),
        passes.stream().mapToInt(Swath::shutOverOther).max().orElse(0),
        wheels.size(),
        (int) wheels.stream().filter(this::isOnRow).count(),
        (int) wheels.stream().filter(wheel -> wheel < 0 || wheel > width()).count(),
        machine.work() == Work.HARVEST,
        swaths.isWithin(tolerance));
  }

  private List<Integer> rowsPerPass() {
    List<Integer> counts = new ArrayList<>();
    int row = 0;
    for (Swath pass : swaths.passes()) {
      int before = row;
      while (row < rows && line(row) < pass.left()) {
        row++;
        before++;
      }
      while (row < rows && pass.covers(line(row))) {
        row++;
      }
      counts.add(row - before);
    }
    return counts;
  }

  /** Where the wheels of all passes run; none if the plan does not say. */
  private List<Long> wheels() {
    List<Long> wheels = new ArrayList<>();
    Tracks tracks = machine.tracks();
    if (tracks != null) {
      long half = tracks.width().tenthsOfMillimetre() * scale() / 2;
      for (Swath pass : swaths.passes()) {
        wheels.add(pass.centre() - half);
        wheels.add(pass.centre() + half);
      }
    }
    return wheels;
  }

  /** Whether a tyre, half of it on each side of its centre, covers the line of a row. */
  private boolean isOnRow(long wheel) {
    Tracks tracks = machine.tracks();
    if (tracks == null) {
      return false;
    }
    long half = tracks.tyre().tenthsOfMillimetre() * scale() / 2;
    long spacing = line(1) - line(0);
    int row = (int) Math.max(0, Math.min(rows - 1L, Math.floorDiv(wheel, spacing)));
    return Math.abs(wheel - line(row)) < half;
  }

  /** The place of a row, from 0 at the left. */
  private long line(int row) {
    return (2L * row + 1) * strip.rowSpacing().tenthsOfMillimetre() * scale() / 2;
  }

  private long width() {
    return swaths.stripWidth() * scale();
  }

  private long scale() {
    return swaths.passes().get(0).scale();
  }
}
