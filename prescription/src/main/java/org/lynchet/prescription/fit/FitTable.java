package org.lynchet.prescription.fit;

import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;
import java.util.function.ToDoubleFunction;
import java.util.stream.Collectors;
import org.lynchet.prescription.quantity.Count;
import org.lynchet.prescription.quantity.LengthUnit;

/** Shows candidates as a table of at most 100 columns, best first, with the reasons in words. */
public final class FitTable {
  private static final int WIDTH = 100;
  private static final int MOST_SHOWN = 8;

  private final FitRequest request;
  private final LengthUnit unit;
  private final StringBuilder text = new StringBuilder();

  private FitTable(FitRequest request) {
    this.request = request;
    this.unit = request.shownUnit();
  }

  /** The table; each line ends with a line feed. */
  public static String of(FitRequest request, Fit fit) {
    return new FitTable(request).render(fit);
  }

  private String render(Fit fit) {
    List<Candidate> candidates = fit.candidates();
    List<Candidate> fitting = candidates.stream().filter(Candidate::fits).toList();
    String crops =
        request.strips().stream()
            .map(FitRequest.StripChoice::crop)
            .distinct()
            .collect(Collectors.joining(" and "));
    wrap(
        String.valueOf(candidates.size()),
        String.format(
            Locale.ROOT,
            "%s to lay %s out in strips of at most %s; %s to %s a pass",
            candidates.size() == 1 ? "way" : "ways",
            crops,
            length(fit.widestTriedMetres()),
            fitting.size() == 1 ? "1 fits" : fitting.size() + " fit",
            request.shownUnits().written(request.tolerance())));
    if (!fit.complete()) {
      line(
          "Wider strips, up to %s, were not tried: too many ways; lower fit.max-strip-width",
          request.shownUnits().written(request.maxStripWidth()));
    }
    line("");
    if (fitting.isEmpty()) {
      nothingFits(candidates);
    } else {
      fitting(fitting);
    }
    cut(candidates.stream().filter(c -> !c.fits()).toList());
    return text.toString();
  }

  private void fitting(List<Candidate> fitting) {
    line("%4s  %-46s %9s  %-13s %-13s", "RANK", "STRIPS", "PERIOD", "CROP SHARES", "BORDER ROWS");
    for (int i = 0; i < Math.min(MOST_SHOWN, fitting.size()); i++) {
      candidate(i + 1, fitting.get(i));
    }
    if (fitting.size() > MOST_SHOWN) {
      line("");
      line("and %d more that fit; --json lists all", fitting.size() - MOST_SHOWN);
    }
    line("");
    for (int i = 0; i < fitting.size(); i++) {
      if (fitting.get(i).planned()) {
        line("The plan as it stands is rank %d.", i + 1);
      }
    }
    if (request.machines().stream().anyMatch(m -> m.work() == FitRequest.Work.SPRAY)) {
      line("%s", wholeBooms(fitting));
    }
  }

  private static String wholeBooms(List<Candidate> fitting) {
    for (int i = 0; i < fitting.size(); i++) {
      if (fitting.get(i).wholeBooms()) {
        return "The best whose period is a whole number of booms is rank " + (i + 1) + ".";
      }
    }
    return "None that fits has a period of whole booms.";
  }

  private void candidate(int rank, Candidate candidate) {
    String strips =
        candidate.strips().stream()
            .map(s -> Count.of(s.rows(), "row") + " " + s.crop() + " " + length(s.widthMetres()))
            .collect(Collectors.joining(", "));
    String period = length(candidate.periodMetres());
    String land = shares(candidate, StripWidth::share);
    String border = shares(candidate, StripWidth::borderRowShare);
    String planned = candidate.planned() ? "  *" : "";
    String row =
        String.format(
            Locale.ROOT,
            "%4d  %-46s %9s  %-13s %-13s%s",
            rank,
            strips,
            period,
            land,
            border,
            planned);
    if (row.length() <= WIDTH) {
      line("%s", row);
    } else {
      String figures =
          "; period " + period + "; crop shares " + land + "; border rows " + border + planned;
      wrap(String.format(Locale.ROOT, "%4d ", rank), strips + figures);
    }
    for (MachineFit machine : candidate.machines()) {
      wrap(machine(machine));
    }
    wrap(String.join("; ", candidate.reasons()));
  }

  private static String shares(Candidate candidate, ToDoubleFunction<StripWidth> share) {
    return candidate.strips().stream()
            .map(s -> String.format(Locale.ROOT, "%.0f", 100 * share.applyAsDouble(s)))
            .collect(Collectors.joining(" / "))
        + " %";
  }

  private String machine(MachineFit fit) {
    double mismatch = fit.mismatchMillimetresPerPass();
    return fit.machine()
        + " in "
        + fit.crop()
        + ": "
        + Count.of(fit.passes(), "pass")
        + (fit.openSections().isEmpty()
            ? ""
            : " with " + each(fit.openSections(), "section") + " open")
        + ", "
        + each(fit.rowsPerPass(), "row")
        + " a pass, "
        + (mismatch == 0
            ? "exact"
            : new Reasons(unit).length(Math.abs(mismatch))
                + (mismatch > 0 ? " over" : " short")
                + " a pass");
  }

  /** Once if all are the same. */
  private static String each(List<Integer> counts, String word) {
    return counts.stream().distinct().count() == 1
        ? Count.of(counts.get(0), word)
        : counts.stream().map(String::valueOf).collect(Collectors.joining(" + "))
            + " "
            + word
            + "s";
  }

  private void nothingFits(List<Candidate> candidates) {
    if (candidates.isEmpty()) {
      line("Nothing fits: one pass of a planter is wider than fit.max-strip-width.");
      return;
    }
    Candidate nearest = candidates.get(0);
    line(
        "Nothing fits. The nearest miss, off by %s a pass:",
        new Reasons(unit).length(nearest.worstMismatchMillimetres()));
    candidate(1, nearest);
  }

  /** Which rules cut how many of the rest. */
  private void cut(List<Candidate> misfits) {
    Map<String, Integer> byRule = new TreeMap<>();
    for (Candidate misfit : misfits) {
      misfit.machines().stream()
          .filter(machine -> !machine.fits())
          .map(Reasons::rule)
          .distinct()
          .forEach(rule -> byRule.merge(rule, 1, Integer::sum));
    }
    if (!byRule.isEmpty()) {
      line("");
      line("Cut, by more than the tolerance: %d", misfits.size());
      byRule.forEach((rule, count) -> line("  %s: %d", rule, count));
    }
  }

  private String length(double metres) {
    String fixed = String.format(Locale.ROOT, "%.2f", metres / unit.metres());
    return fixed.replaceAll("\\.?0+$", "") + " " + unit.symbol();
  }

  private void line(String format, Object... arguments) {
    text.append(String.format(Locale.ROOT, format, arguments).stripTrailing()).append('\n');
  }

  private void wrap(String words) {
    wrap("     ", words);
  }

  private void wrap(String first, String words) {
    StringBuilder current = new StringBuilder(first);
    for (String word : words.split(" ", -1)) {
      if (current.length() + 1 + word.length() > WIDTH) {
        text.append(current).append('\n');
        current.setLength(0);
        current.append("       ");
      }
      current.append(' ').append(word);
    }
    text.append(current).append('\n');
  }
}
