package org.lynchet.prescription.fit;

import java.io.Serializable;
import java.util.List;

/**
 * What a search found.
 *
 * @param candidates those that fit, best first, then the others, the nearest miss first; empty if
 *     one pass of a planter is wider than the widest strip
 * @param complete whether all strips up to the widest were tried
 * @param widestTriedMetres no wider strips were tried
 */
public record Fit(List<Candidate> candidates, boolean complete, double widestTriedMetres)
    implements Serializable {

  /** Copies the list. */
  public Fit {
    candidates = List.copyOf(candidates);
  }
}
