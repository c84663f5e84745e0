package org.lynchet.prescription.fit;

import java.io.Serializable;
import java.util.ArrayList;
import java.util.List;

/**
 * A number of passes for each strip, judged.
 *
 * @param fits whether every machine is within the tolerance
 * @param planned whether the plan's own strips have these numbers of passes
 * @param periodMetres the width after which the pattern begins again
 * @param equalWidths whether all strips are equally wide, to the tolerance, so that crops can
 *     change places from year to year
 * @param unevenBooms sprayers whose boom does not go into the period a whole number of times: the
 *     spray guidance lines of one crop then do not serve the field
 * @param strips its strips, left to right
 * @param machines how each machine does on each crop
 * @param reasons why it stands where it stands, in words
 */
public record Candidate(
    boolean fits,
    boolean planned,
    double periodMetres,
    boolean equalWidths,
    List<String> unevenBooms,
    List<StripWidth> strips,
    List<MachineFit> machines,
    List<String> reasons)
    implements Serializable {

  /** Copies the lists. */
  public Candidate {
    unevenBooms = List.copyOf(unevenBooms);
    strips = List.copyOf(strips);
    machines = List.copyOf(machines);
    reasons = List.copyOf(reasons);
  }

  /** The same with one more reason, before the others. */
  Candidate because(String reason) {
    List<String> all = new ArrayList<>();
    all.add(reason);
    all.addAll(reasons);
    return new Candidate(
        fits, planned, periodMetres, equalWidths, unevenBooms, strips, machines, all);
  }

  /** Whether one set of spray guidance lines serves the field. */
  public boolean wholeBooms() {
    return unevenBooms.isEmpty();
  }

  /** The widest strip, in metres. */
  double widestMetres() {
    return strips.stream().mapToDouble(StripWidth::widthMetres).max().orElse(0);
  }

  /** Sections that reach over another crop though shut, on all machines and crops together. */
  int shutOverOther() {
    return machines.stream().mapToInt(MachineFit::shutOverOther).sum();
  }

  /** The share of wheels that damage a growing crop; 0 where the plan says nothing of wheels. */
  double harmfulWheelShare() {
    double wheels = machines.stream().mapToInt(MachineFit::wheels).sum();
    return machines.stream().mapToInt(MachineFit::harmfulWheels).sum() / Math.max(1, wheels);
  }

  /** How far the machines are off, together, in millimetres a pass. */
  double mismatchMillimetres() {
    return machines.stream().mapToDouble(m -> Math.abs(m.mismatchMillimetresPerPass())).sum();
  }

  /** The largest mismatch of a machine, in millimetres a pass. */
  double worstMismatchMillimetres() {
    return machines.stream()
        .mapToDouble(m -> Math.abs(m.mismatchMillimetresPerPass()))
        .max()
        .orElse(0);
  }
}
