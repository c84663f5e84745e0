package org.lynchet.prescription.fit;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Collectors;
import org.lynchet.prescription.quantity.Length;
import org.lynchet.prescription.quantity.LengthUnit;

/** Shows candidates as a table of at most 100 columns, best first, with the reasons in words. */
public final class FitTable {
  private static final int WIDTH = 100;
  private static final int MOST_SHOWN = 12;

  private final FitRequest request;
  private final LengthUnit unit;
  private final StringBuilder text = new StringBuilder();

  private FitTable(FitRequest request) {
    this.request = request;
    LengthUnit written = request.maxStripWidth().unit();
    this.unit =
        written == LengthUnit.FOOT || written == LengthUnit.INCH
            ? LengthUnit.FOOT
            : LengthUnit.METRE;
  }

  /** The table; each line ends with a line feed. */
  public static String of(FitRequest request, List<Candidate> candidates) {
    return new FitTable(request).render(candidates);
  }

  private String render(List<Candidate> candidates) {
    List<Candidate> fitting = candidates.stream().filter(Candidate::fits).toList();
    line(
        "%d ways to lay %s out in strips of at most %s; %d fit to %s a pass",
        candidates.size(),
        request.strips().stream()
            .map(FitRequest.StripChoice::crop)
            .distinct()
            .collect(Collectors.joining(" and ")),
        length(request.maxStripWidth().metres()),
        fitting.size(),
        written(request.tolerance()));
    line("");
    if (fitting.isEmpty()) {
      nothingFits(candidates);
      return text.toString();
    }
    line("%4s  %-44s %12s %12s", "RANK", "STRIPS", "PERIOD", "BORDER ROWS");
    for (int i = 0; i < Math.min(MOST_SHOWN, fitting.size()); i++) {
      candidate(i + 1, fitting.get(i));
    }
    if (fitting.size() > MOST_SHOWN) {
      line("");
      line("and %d more that fit; --json lists all", fitting.size() - MOST_SHOWN);
    }
    cut(candidates.stream().filter(c -> !c.fits()).toList());
    return text.toString();
  }

  private void candidate(int rank, Candidate candidate) {
    line(
        "%4d  %-44s %12s %12s",
        rank,
        candidate.strips().stream()
            .map(s -> s.rows() + " rows " + s.crop() + " " + length(s.widthMetres()))
            .collect(Collectors.joining(", ")),
        length(candidate.periodMetres()),
        candidate.strips().stream()
            .map(s -> String.format(Locale.ROOT, "%.0f %%", 100 * s.borderRowShare()))
            .collect(Collectors.joining(" / ")));
    for (MachineFit machine : candidate.machines()) {
      wrap(machine(machine));
    }
    wrap(String.join("; ", candidate.reasons()));
  }

  private static String machine(MachineFit fit) {
    Integer open = fit.openSections();
    Integer rows = fit.rowsPerPass();
    return fit.machine()
        + " in "
        + fit.crop()
        + ": "
        + fit.passes()
        + (fit.passes() == 1 ? " pass" : " passes")
        + (open == null ? "" : ", " + open + " sections open")
        + (rows == null ? ", rows cut between passes" : ", " + rows + " rows a pass")
        + (fit.mismatchMillimetresPerPass() == 0
            ? ", exact"
            : String.format(Locale.ROOT, ", %+.1f mm a pass", fit.mismatchMillimetresPerPass()));
  }

  private void nothingFits(List<Candidate> candidates) {
    if (candidates.isEmpty()) {
      line("Nothing fits: one pass of a planter is wider than fit.max-strip-width.");
      return;
    }
    Candidate nearest = candidates.get(0);
    line(
        "Nothing fits. The nearest miss, off by %.1f mm a pass:",
        nearest.worstMismatchMillimetres());
    candidate(1, nearest);
  }

  /** Which machines cut how many of the rest. */
  private void cut(List<Candidate> misfits) {
    Map<String, Integer> byRule = new TreeMap<>();
    for (Candidate misfit : misfits) {
      misfit.machines().stream()
          .filter(machine -> !machine.fits())
          .map(
              machine ->
                  machine.machine()
                      + (machine.mismatchMillimetresPerPass() > 0
                          ? " reaches over in "
                          : " leaves something in ")
                      + machine.crop())
          .distinct()
          .forEach(rule -> byRule.merge(rule, 1, Integer::sum));
    }
    if (!byRule.isEmpty()) {
      line("");
      line("Cut: %d", misfits.size());
      byRule.forEach((rule, count) -> line("  %s: %d", rule, count));
    }
  }

  private String length(double metres) {
    String fixed = String.format(Locale.ROOT, "%.2f", metres / unit.metres());
    return fixed.replaceAll("\\.?0+$", "") + " " + unit.symbol();
  }

  private static String written(Length length) {
    return String.format(Locale.ROOT, "%.2f", length.amount()).replaceAll("\\.?0+$", "")
        + " "
        + length.unit().symbol();
  }

  private void line(String format, Object... arguments) {
    text.append(String.format(Locale.ROOT, format, arguments).stripTrailing()).append('\n');
  }

  private void wrap(String words) {
    List<String> lines = new ArrayList<>();
    StringBuilder current = new StringBuilder("     ");
    for (String word : words.split(" ", -1)) {
      if (current.length() + 1 + word.length() > WIDTH) {
        lines.add(current.toString());
        current.setLength(0);
        current.append("       ");
      }
      current.append(' ').append(word);
    }
    lines.add(current.toString());
    lines.forEach(wrapped -> text.append(wrapped).append('\n'));
  }
}
