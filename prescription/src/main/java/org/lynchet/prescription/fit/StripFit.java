package org.lynchet.prescription.fit;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.lynchet.prescription.fit.FitRequest.Implement;
import org.lynchet.prescription.fit.FitRequest.StripChoice;
import org.lynchet.prescription.fit.FitRequest.Work;
import org.lynchet.prescription.quantity.Length;

/** Searches the numbers of passes that suit all machines, best first. */
public final class StripFit {
  private final FitRequest request;
  private final long tolerance;
  private final Map<Key, List<MachineFit>> judged = new HashMap<>();

  private StripFit(FitRequest request) {
    this.request = request;
    this.tolerance = request.tolerance().tenthsOfMillimetre();
  }

  /** How machines do on so many passes of a planter in a crop. */
  private record Key(String crop, String planter, int passes) {}

  /** Judges every number of passes up to the widest strip. */
  public static Fit search(FitRequest request) {
    Choices choices = new Choices(request.strips(), request.maxStripWidth().tenthsOfMillimetre());
    StripFit fit = new StripFit(request);
    return new Fit(
        Ranking.of(choices.all().stream().map(fit::candidate).toList()),
        choices.isComplete(),
        choices.widest() / Length.TENTHS_IN_A_METRE);
  }

  /** Judges the plan's own numbers of passes, however wide its strips are. */
  public static Candidate planned(FitRequest request) {
    return new StripFit(request)
        .candidate(request.strips().stream().mapToInt(StripChoice::plannedPasses).toArray());
  }

  private Candidate candidate(int[] passes) {
    long[] widths = new long[passes.length];
    long period = 0;
    boolean planned = true;
    Set<MachineFit> machines = new LinkedHashSet<>();
    for (int i = 0; i < passes.length; i++) {
      StripChoice strip = request.strips().get(i);
      widths[i] = passes[i] * strip.passWidth();
      period += widths[i];
      planned &= passes[i] == strip.plannedPasses();
      machines.addAll(judge(strip, passes[i]));
    }
    List<StripWidth> strips = new ArrayList<>();
    for (int i = 0; i < passes.length; i++) {
      strips.add(width(request.strips().get(i), passes[i], widths[i], period));
    }
    boolean equal = equal(widths);
    List<String> uneven = unevenBooms(period);
    List<MachineFit> fits = List.copyOf(machines);
    return new Candidate(
        fits.stream().allMatch(MachineFit::fits),
        planned,
        period / Length.TENTHS_IN_A_METRE,
        equal,
        uneven,
        strips,
        fits,
        new Reasons(request.shownUnit()).of(fits, equal, uneven));
  }

  private List<MachineFit> judge(StripChoice strip, int passes) {
    return judged.computeIfAbsent(
        new Key(strip.crop(), strip.planter(), passes),
        key ->
            request.machines().stream()
                .filter(machine -> machine.worksIn(strip.crop()))
                .map(machine -> Judge.of(machine, strip, passes, tolerance))
                .toList());
  }

  private static StripWidth width(StripChoice strip, int passes, long width, long period) {
    int rows = passes * strip.rows();
    return new StripWidth(
        strip.crop(),
        passes,
        rows,
        width / Length.TENTHS_IN_A_METRE,
        Math.min(1, strip.borderRows() / (double) rows),
        width / (double) period);
  }

  private boolean equal(long[] widths) {
    long narrowest = Long.MAX_VALUE;
    long widest = 0;
    for (long width : widths) {
      narrowest = Math.min(narrowest, width);
      widest = Math.max(widest, width);
    }
    return widest - narrowest <= tolerance;
  }

  /** Sprayers whose boom does not go into the period a whole number of times. */
  private List<String> unevenBooms(long period) {
    return request.machines().stream()
        .filter(machine -> machine.work() == Work.SPRAY)
        .filter(machine -> !isWholeBooms(period, machine))
        .map(Implement::name)
        .toList();
  }

  /** To the tolerance for each boom, like every other mismatch. */
  private boolean isWholeBooms(long period, Implement machine) {
    long boom = machine.width().tenthsOfMillimetre();
    long booms = Math.floorDiv(2 * period + boom, 2 * boom);
    return booms > 0 && Math.abs(booms * boom - period) <= booms * tolerance;
  }
}
