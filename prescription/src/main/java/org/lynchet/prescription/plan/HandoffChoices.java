package org.lynchet.prescription.plan;

import java.io.Serializable;
import java.util.List;

/**
 * What is written.
 *
 * @param offZones whether the other crops' strips go into each crop's planting file at rate 0
 * @param formats the formats of the planting files, in the plan's order
 */
public record HandoffChoices(boolean offZones, List<Format> formats) implements Serializable {

  /** Copies the list. */
  public HandoffChoices {
    formats = List.copyOf(formats);
  }

  /** The formats of planting files. */
  public enum Format {
    SHAPEFILE,
    GEOJSON
  }
}
