package org.lynchet.prescription.placement;

import java.util.ArrayList;
import java.util.List;
import java.util.TreeSet;
import org.lynchet.geometry.strip.PatternStrip;
import org.lynchet.geometry.strip.StripPattern;
import org.lynchet.prescription.quantity.Length;

/**
 * Lists the shifts of a pattern that are tried: each row position over one period, in steps of the
 * row spacing of the first strip's planter, counted from where the pattern lies; and each shift by
 * which a pass begins or ends with the field, for rows counted from elsewhere would miss these.
 *
 * <p>Shifts are whole tenths of a millimetre, from half a period to the left to half a period to
 * the right. There are at most 2,000: with more rows or passes in a period, every so manieth is
 * tried.
 */
final class StartOffsets {
  private static final int MOST_ROWS = 1000;
  private static final int MOST_EDGES = 500;

  private StartOffsets() {}

  /**
   * The shifts in metres, rising; 0 is one of them.
   *
   * @param pattern as the plan has it
   * @param minOffsetMetres the least offset of the field without its headland
   * @param maxOffsetMetres the greatest
   */
  static double[] of(StripPattern pattern, double minOffsetMetres, double maxOffsetMetres) {
    double period = pattern.periodMetres();
    TreeSet<Long> tenths = new TreeSet<>();
    double row = pattern.strips().get(0).rowSpacingMetres();
    double rows = Math.floor(period / row + 1e-9);
    double step = row * Math.ceil(rows / MOST_ROWS);
    for (double k = 0; k * step < period - 1e-9; k++) {
      tenths.add(tenths(k * step, period));
    }
    List<Double> edges = passEdges(pattern);
    int each = (edges.size() + MOST_EDGES - 1) / MOST_EDGES;
    for (int i = 0; i < edges.size(); i += each) {
      tenths.add(tenths(minOffsetMetres - edges.get(i), period));
      tenths.add(tenths(maxOffsetMetres - edges.get(i), period));
    }
    return tenths.stream().mapToDouble(t -> t / Length.TENTHS_IN_A_METRE).toArray();
  }

  /** A shift within half a period that comes to the same as any shift. */
  private static long tenths(double shift, double period) {
    double periods = Math.floor(shift / period + 0.5 - 1e-9);
    return Math.round((shift - periods * period) * Length.TENTHS_IN_A_METRE);
  }

  /** Offsets of the left edges of the passes of one period. */
  private static List<Double> passEdges(StripPattern pattern) {
    List<Double> edges = new ArrayList<>();
    double left = pattern.originMetres();
    for (PatternStrip strip : pattern.strips()) {
      for (int pass = 0; pass < strip.passes(); pass++) {
        edges.add(left + pass * strip.passWidthMetres());
      }
      left += strip.widthMetres();
    }
    return edges;
  }
}
