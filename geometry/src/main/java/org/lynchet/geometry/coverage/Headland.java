package org.lynchet.geometry.coverage;

import java.io.Serializable;
import org.jspecify.annotations.Nullable;

/**
 * How wide the headland is and what it follows.
 *
 * @param widthMetres its width, above 0
 * @param aroundHoles whether it follows the holes too
 * @param ends where the rows end, or null if it lies along the whole boundary
 */
public record Headland(double widthMetres, boolean aroundHoles, @Nullable HeadlandEnds ends)
    implements Serializable {

  /** A headland along the whole boundary. */
  public Headland(double widthMetres, boolean aroundHoles) {
    this(widthMetres, aroundHoles, null);
  }
}
