package org.lynchet.prescription.plan;

import java.io.Serializable;
import org.jspecify.annotations.Nullable;

/**
 * What the terminal that receives a planting file can take; null where the plan does not say.
 *
 * @param polygons polygons in a file
 * @param verticesPerPolygon vertices of a polygon, holes with it
 * @param rates different rates in a file
 */
public record TerminalLimits(
    @Nullable Integer polygons, @Nullable Integer verticesPerPolygon, @Nullable Integer rates)
    implements Serializable {

  /** No limits. */
  public static final TerminalLimits NONE = new TerminalLimits(null, null, null);
}
