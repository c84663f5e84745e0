package org.lynchet.prescription.fit;

import java.io.Serializable;
import java.util.List;

/**
 * A number of passes for each strip, judged.
 *
 * @param fits whether every machine is within the tolerance
 * @param periodMetres the width after which the pattern begins again
 * @param wholeBooms whether the period is a whole number of widths of every sprayer, so that one
 *     set of spray guidance lines serves the field
 * @param strips its strips, left to right
 * @param machines how each machine does on each crop
 * @param reasons why it stands where it stands, in words
 */
public record Candidate(
    boolean fits,
    double periodMetres,
    boolean wholeBooms,
    List<StripWidth> strips,
    List<MachineFit> machines,
    List<String> reasons)
    implements Serializable {

  /** Copies the lists. */
  public Candidate {
    strips = List.copyOf(strips);
    machines = List.copyOf(machines);
    reasons = List.copyOf(reasons);
  }

  /** How far the machines are off, together, in millimetres a pass. */
  public double mismatchMillimetres() {
    return machines.stream().mapToDouble(m -> Math.abs(m.mismatchMillimetresPerPass())).sum();
  }

  /** The largest mismatch of a machine, in millimetres a pass. */
  public double worstMismatchMillimetres() {
    return machines.stream()
        .mapToDouble(m -> Math.abs(m.mismatchMillimetresPerPass()))
        .max()
        .orElse(0);
  }
}
