package org.lynchet.prescription.plan;

import java.io.Serializable;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * Where the pattern starts, and which way it runs.
 *
 * @param kind whether the AB line stays where the plan has it
 * @param headingsDegrees further headings to try, degrees clockwise from true north, [0, 360);
 *     empty to keep the AB line's own
 * @param weights what a placement costs
 * @param wantedShares by crop, its share of the area in strips, 1 together; empty for the shares of
 *     the pattern
 */
public record PlacementChoices(
    Kind kind,
    List<Double> headingsDegrees,
    PlacementWeights weights,
    Map<String, Double> wantedShares)
    implements Serializable {

  /** The AB line of the plan. */
  public static final PlacementChoices FIXED =
      new PlacementChoices(Kind.FIXED, List.of(), PlacementWeights.DEFAULT, Map.of());

  /** Copies the list and the map, keeping its order. */
  public PlacementChoices {
    headingsDegrees = List.copyOf(headingsDegrees);
    wantedShares = Collections.unmodifiableMap(new LinkedHashMap<>(wantedShares));
  }

  /** What becomes of the AB line. */
  public enum Kind {
    /** It stays where the plan has it. */
    FIXED,
    /** It moves to where the least is lost. */
    BEST
  }
}
