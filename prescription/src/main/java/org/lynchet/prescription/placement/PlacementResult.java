package org.lynchet.prescription.placement;

import java.io.Serializable;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;
import org.lynchet.geometry.guidance.OffsetFrame;
import org.lynchet.prescription.plan.PlacementWeights;
import org.lynchet.prescription.plan.PlannedGuidance.Position;

/**
 * The placement that costs least beside the one of the plan.
 *
 * @param headings how many headings were tried
 * @param placements how many placements were tried
 * @param weights the weights of the terms
 * @param wantedShares the crops and the shares of the area in strips that they are wanted to have
 * @param fixed the placement of the plan
 * @param chosen the one that costs least; the plan's own if none costs less
 * @param frame the frame of the chosen AB line
 * @param a where the chosen AB line begins
 * @param b a point of it as far along as the field reaches, at least 100 m from A
 */
public record PlacementResult(
    int headings,
    int placements,
    PlacementWeights weights,
    Map<String, Double> wantedShares,
    Placement fixed,
    Placement chosen,
    OffsetFrame frame,
    Position a,
    Position b)
    implements Serializable {

  /** Copies the map, keeping its order. */
  public PlacementResult {
    wantedShares = Collections.unmodifiableMap(new LinkedHashMap<>(wantedShares));
  }

  /** Whether the AB line stays where the plan has it. */
  public boolean isUnchanged() {
    return chosen.turnDegrees() == 0 && chosen.shiftMetres() == 0;
  }
}
