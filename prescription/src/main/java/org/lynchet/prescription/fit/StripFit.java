package org.lynchet.prescription.fit;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import org.lynchet.prescription.fit.FitRequest.Implement;
import org.lynchet.prescription.fit.FitRequest.StripChoice;

/** Searches the numbers of passes that suit all machines, best first. */
public final class StripFit {
  /** More candidates than this are not looked at: the narrowest come first. */
  private static final int MOST_CANDIDATES = 100_000;

  private final FitRequest request;
  private final Judge judge;

  private StripFit(FitRequest request) {
    this.request = request;
    this.judge = new Judge(request.tolerance());
  }

  /**
   * Judges every number of passes up to the widest strip.
   *
   * @return those that fit, best first, then the others, the nearest miss first; empty if one pass
   *     of a planter is wider than the widest strip
   */
  public static List<Candidate> search(FitRequest request) {
    StripFit fit = new StripFit(request);
    List<Candidate> candidates = new ArrayList<>();
    fit.enumerate(new int[request.strips().size()], 0, candidates);
    candidates.sort(BEST_FIRST);
    return candidates;
  }

  /**
   * Those that fit come first. Then the fewest wheels on rows, one set of spray lines for the
   * field, the least mismatch, the fewest passes over a strip, and the narrowest period, in which
   * the border rows have the largest share.
   */
  private static final Comparator<Candidate> BEST_FIRST =
      Comparator.comparing((Candidate c) -> !c.fits())
          .thenComparingDouble(c -> c.fits() ? 0 : c.worstMismatchMillimetres())
          .thenComparingInt(c -> c.machines().stream().mapToInt(MachineFit::wheelsOnRows).sum())
          .thenComparing(c -> !c.wholeBooms())
          .thenComparingDouble(c -> Math.rint(c.mismatchMillimetres()))
          .thenComparingDouble(Candidate::periodMetres);

  private void enumerate(int[] passes, int strip, List<Candidate> candidates) {
    if (strip == passes.length) {
      candidates.add(candidate(passes));
      return;
    }
    long most = Tenths.of(request.maxStripWidth()) / request.strips().get(strip).passTenths();
    for (passes[strip] = 1;
        passes[strip] <= most && candidates.size() < MOST_CANDIDATES;
        passes[strip]++) {
      enumerate(passes, strip + 1, candidates);
    }
  }

  private Candidate candidate(int[] passes) {
    long period = 0;
    for (int i = 0; i < passes.length; i++) {
      period += passes[i] * request.strips().get(i).passTenths();
    }
    List<StripWidth> widths = new ArrayList<>();
    List<MachineFit> machines = new ArrayList<>();
    for (int i = 0; i < passes.length; i++) {
      StripChoice strip = request.strips().get(i);
      long width = passes[i] * strip.passTenths();
      int rows = passes[i] * strip.rows();
      widths.add(
          new StripWidth(
              strip.crop(),
              passes[i],
              rows,
              Tenths.metres(width),
              Math.min(1, strip.borderRows() / (double) rows),
              width / (double) period));
      for (Implement machine : request.machines()) {
        if (machine.worksIn(strip.crop())) {
          machines.add(judge.judge(machine, strip, passes[i]));
        }
      }
    }
    List<Implement> uneven = Judge.unevenBooms(request.machines(), period);
    return new Candidate(
        machines.stream().allMatch(MachineFit::fits),
        Tenths.metres(period),
        uneven.isEmpty(),
        widths,
        machines,
        Reasons.of(machines, uneven));
  }

  /** Says in words how machines do. */
  private static final class Reasons {
    static List<String> of(List<MachineFit> machines, List<Implement> uneven) {
      List<String> reasons = new ArrayList<>();
      for (MachineFit fit : machines) {
        if (!fit.fits()) {
          reasons.add(
              String.format(
                  Locale.ROOT,
                  "%s %s %.1f mm a pass in %s",
                  fit.machine(),
                  fit.mismatchMillimetresPerPass() > 0 ? "reaches over by" : "leaves",
                  Math.abs(fit.mismatchMillimetresPerPass()),
                  fit.crop()));
        }
        if (fit.wheelsOnRows() > 0) {
          reasons.add(
              fit.machine() + " runs " + fit.wheelsOnRows() + " wheels on rows of " + fit.crop());
        }
        if (fit.closedOverOther() > 0) {
          reasons.add(
              fit.machine()
                  + " holds "
                  + fit.closedOverOther()
                  + " shut sections over the crop beside "
                  + fit.crop());
        }
      }
      for (Implement machine : uneven) {
        reasons.add("the period is no whole number of widths of " + machine.name());
      }
      if (reasons.isEmpty()) {
        reasons.add(
            "every machine works in whole passes, and one set of spray lines serves the field");
      }
      return reasons;
    }
  }
}
