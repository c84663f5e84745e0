package org.lynchet.prescription.swath;

import java.io.Serializable;
import java.util.ArrayList;
import java.util.List;

/**
 * Lays the passes of a machine over a strip.
 *
 * <p>One pass lies in the middle of the strip. The outer edges of several lie on the strip's edges,
 * and what they overlap or leave lies between them, in equal parts. Open sections are shared out so
 * that no pass has more than one more than another, the first passes the more; which sections are
 * open is chosen so that the fewest shut ones reach over another crop and then so that the machine
 * runs as near as possible to the middle of its swath.
 *
 * @param stripWidth width of the strip in 0.1 mm
 * @param mismatch how much the swaths are together wider than the strip, in 0.1 mm
 * @param passes the passes, left to right, at least one
 */
public record Swaths(long stripWidth, long mismatch, List<Swath> passes) implements Serializable {

  /** Copies the list. */
  public Swaths {
    passes = List.copyOf(passes);
  }

  /**
   * The passes whose mismatch is least, for each; of two alike, the wider swaths, which leave
   * nothing.
   *
   * @param tolerance how far a shut section may reach over another crop without counting, in 0.1 mm
   */
  public static Swaths nearest(SteeredMachine machine, long strip, long tolerance) {
    return new Layout(machine, strip, tolerance).of(nearestSteps(machine, strip));
  }

  /**
   * The passes that reach over no other crop, if there are any: where nothing is within the
   * tolerance, several passes overlap on the strip, and one pass leaves something of it. Only a
   * strip narrower than one section is reached over.
   *
   * @param tolerance how much the mismatch may be for each pass, in 0.1 mm
   */
  public static Swaths inside(SteeredMachine machine, long strip, long tolerance) {
    long steps = nearestSteps(machine, strip);
    long lower = Math.max(1, strip / machine.step());
    long upper = -Math.floorDiv(-strip, machine.step());
    if (Math.abs(mismatch(machine, strip, steps)) > tolerance * passes(machine, steps)) {
      steps = passes(machine, upper) > 1 ? upper : lower;
    }
    return new Layout(machine, strip, tolerance).of(steps);
  }

  /** The mismatch for each pass, in millimetres. */
  public double mismatchMillimetresPerPass() {
    return mismatch / (10.0 * passes.size());
  }

  /** Whether the mismatch is at most so much for each pass, in 0.1 mm. */
  public boolean isWithin(long tolerance) {
    return Math.abs(mismatch) <= tolerance * passes.size();
  }

  /** Whether the open sections of its only pass reach over another crop, by more than that. */
  public boolean reachesOver(long tolerance) {
    return passes.size() == 1 && mismatch > tolerance;
  }

  private static long nearestSteps(SteeredMachine machine, long strip) {
    long lower = strip / machine.step();
    long upper = -Math.floorDiv(-strip, machine.step());
    if (lower == 0) {
      return upper;
    }
    // Both mismatches for each pass, multiplied by both numbers of passes.
    long left = Math.abs(mismatch(machine, strip, lower)) * passes(machine, upper);
    long over = Math.abs(mismatch(machine, strip, upper)) * passes(machine, lower);
    return left < over ? lower : upper;
  }

  private static long mismatch(SteeredMachine machine, long strip, long steps) {
    return steps * machine.step() - strip;
  }

  private static long passes(SteeredMachine machine, long steps) {
    return -Math.floorDiv(-steps, machine.sections());
  }

  /** Places swaths and booms on one strip. */
  private record Layout(SteeredMachine machine, long strip, long tolerance) {

    Swaths of(long steps) {
      int count = (int) passes(machine, steps);
      long mismatch = mismatch(machine, strip, steps);
      long scale = 2L * Math.max(1, count - 1);
      long between = count == 1 ? 0 : mismatch * scale / (count - 1);
      long left = count == 1 ? -mismatch * scale / 2 : 0;
      List<Swath> passes = new ArrayList<>();
      for (int i = 0; i < count; i++) {
        long open = steps / count + (i < steps % count ? 1 : 0);
        passes.add(swath(scale, left, open));
        left += open * machine.step() * scale - between;
      }
      return new Swaths(strip, mismatch, passes);
    }

    private Swath swath(long scale, long left, long open) {
      long right = left + open * machine.step() * scale;
      if (machine.section() == 0) {
        return new Swath(scale, left, right, (left + right) / 2, 0, 0, 0);
      }
      long shut = machine.sections() - open;
      long best = shut / 2;
      for (long before = 0; before <= shut; before++) {
        if (isBetter(before, best, scale, left, right, shut)) {
          best = before;
        }
      }
      long step = machine.step() * scale;
      return new Swath(
          scale,
          left,
          right,
          left - best * step + machine.sections() * step / 2,
          (int) best + 1,
          (int) open,
          (int) over(best, scale, left, right, shut));
    }

    private boolean isBetter(long before, long best, long scale, long left, long right, long shut) {
      long over = over(before, scale, left, right, shut);
      long bestOver = over(best, scale, left, right, shut);
      return over < bestOver
          || (over == bestOver && Math.abs(2 * before - shut) < Math.abs(2 * best - shut));
    }

    /** Shut sections, so many of them before the open ones, that reach beyond the strip. */
    private long over(long before, long scale, long left, long right, long shut) {
      long room = tolerance * scale;
      return Math.min(before, beyond(-room - (left - before * machine.step() * scale), scale))
          + Math.min(
              shut - before,
              beyond(
                  right + (shut - before) * machine.step() * scale - strip * scale - room, scale));
    }

    /** How many sections, the last in part, make up that width. */
    private long beyond(long width, long scale) {
      return Math.max(0, -Math.floorDiv(-width, machine.step() * scale));
    }
  }
}
