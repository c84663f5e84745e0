package org.lynchet.prescription.fit;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.lynchet.prescription.fit.FitRequest.Implement;
import org.lynchet.prescription.fit.FitRequest.StripChoice;
import org.lynchet.prescription.fit.FitRequest.Tracks;
import org.lynchet.prescription.fit.FitRequest.Work;
import org.lynchet.prescription.quantity.Length;

/** Works out what a machine does on a strip of a certain width. */
final class Judge {
  private final long tolerance;

  Judge(Length tolerance) {
    this.tolerance = Tenths.of(tolerance);
  }

  /**
   * Judges a machine on a strip.
   *
   * <p>Passes are shared out evenly over the strip. A machine without sections lays its whole width
   * down on each; one with sections opens as many as come nearest to its share of the strip.
   */
  MachineFit judge(Implement machine, StripChoice strip, int planterPasses) {
    long width = planterPasses * strip.passTenths();
    long machineWidth = Tenths.of(machine.width());
    Length sectionLength = machine.section();
    long section = sectionLength == null ? 0 : Tenths.of(sectionLength);
    boolean sections = machine.work() == Work.SPRAY && section > 0;
    int passes = passes(width, machineWidth, sections);
    Integer open = sections ? openSections(width, passes, section, machineWidth) : null;
    long covered = open == null ? machineWidth : open * section;
    // Both sides times passes, so that nothing is divided: passes x covered against the width.
    long mismatch = passes * covered - width;
    int closed = open == null ? 0 : (int) (machineWidth / section) - open;
    return new MachineFit(
        machine.name(),
        strip.crop(),
        passes,
        Tenths.millimetres(mismatch) / passes,
        rowsPerPass(planterPasses * strip.rows(), passes),
        open,
        passes > 1 ? (closed + 1) / 2 : closed,
        wheelsOnRows(machine.tracks(), strip, planterPasses, passes),
        Math.abs(mismatch) <= passes * tolerance);
  }

  private int passes(long width, long machineWidth, boolean sections) {
    // With sections the boom may be wider than needed; without, take what comes nearest.
    long passes =
        sections
            ? Math.floorDiv(width - tolerance + machineWidth - 1, machineWidth)
            : Math.floorDiv(2 * width + machineWidth, 2 * machineWidth);
    return (int) Math.max(1, passes);
  }

  private static int openSections(long width, int passes, long section, long machineWidth) {
    long nearest = Math.floorDiv(2 * width + passes * section, 2L * passes * section);
    return (int) Math.max(1, Math.min(nearest, machineWidth / section));
  }

  private static @Nullable Integer rowsPerPass(int rows, int passes) {
    return rows % passes == 0 ? rows / passes : null;
  }

  /**
   * Wheels of all passes of a machine on a strip that run on a row: whose tyre, half its width on
   * each side of its centre, covers a row's line.
   */
  private static int wheelsOnRows(
      @Nullable Tracks tracks, StripChoice strip, int planterPasses, int passes) {
    if (tracks == null) {
      return 0;
    }
    int rows = planterPasses * strip.rows();
    long spacing = Tenths.of(strip.rowSpacing());
    long track = Tenths.of(tracks.width());
    long tyre = Tenths.of(tracks.tyre());
    int hits = 0;
    for (int pass = 0; pass < passes; pass++) {
      for (int side = -1; side <= 1; side += 2) {
        // Everything times 2 x passes: the wheel's place, a row's place, half a tyre.
        long wheel = (2L * pass + 1) * rows * spacing + (long) side * passes * track;
        for (int row = 0; row < rows; row++) {
          long line = (2L * row + 1) * passes * spacing;
          if (Math.abs(wheel - line) < passes * tyre) {
            hits++;
            break;
          }
        }
      }
    }
    return hits;
  }

  /** The widths of sprayers that the period is not a whole number of. */
  static List<Implement> unevenBooms(List<Implement> machines, long period) {
    List<Implement> uneven = new ArrayList<>();
    for (Implement machine : machines) {
      if (machine.work() == Work.SPRAY && period % Tenths.of(machine.width()) != 0) {
        uneven.add(machine);
      }
    }
    return uneven;
  }
}
