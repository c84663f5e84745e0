package org.lynchet.prescription.placement;

import java.io.Serializable;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;

/**
 * Where a pattern lies, and what that loses.
 *
 * @param turnDegrees by how much the plan's AB line is turned about A, clockwise, (-90, 90]
 * @param shiftMetres how far it is then moved to the right
 * @param terms what the placement loses
 * @param costSquareMetres what that costs
 * @param cropSquareMetres the crops and their areas in strips
 */
public record Placement(
    double turnDegrees,
    double shiftMetres,
    PlacementTerms terms,
    double costSquareMetres,
    Map<String, Double> cropSquareMetres)
    implements Serializable {

  /** Copies the map, keeping its order. */
  public Placement {
    cropSquareMetres = Collections.unmodifiableMap(new LinkedHashMap<>(cropSquareMetres));
  }

  /** A crop's share of the area in strips; 0 without strips. */
  double share(String crop) {
    double all = cropSquareMetres.values().stream().mapToDouble(Double::doubleValue).sum();
    return all > 0 ? cropSquareMetres.getOrDefault(crop, 0.0) / all : 0;
  }
}
