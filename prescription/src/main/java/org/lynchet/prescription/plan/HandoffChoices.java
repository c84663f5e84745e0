package org.lynchet.prescription.plan;

import java.io.Serializable;
import java.util.List;

/**
 * What is written.
 *
 * @param offZones whether the other crops' strips go into each crop's planting file at rate 0
 * @param formats the formats, in the plan's order
 * @param taskData how the format isoxml is written
 */
public record HandoffChoices(boolean offZones, List<Format> formats, TaskDataChoices taskData)
    implements Serializable {

  /** Copies the list. */
  public HandoffChoices {
    formats = List.copyOf(formats);
  }

  /** Choices with the defaults of task data. */
  public HandoffChoices(boolean offZones, List<Format> formats) {
    this(offZones, formats, TaskDataChoices.DEFAULT);
  }

  /** The same in other formats. */
  public HandoffChoices withFormats(List<Format> others) {
    return new HandoffChoices(offZones, others, taskData);
  }

  /** The formats that prescriptions are written in. */
  public enum Format {
    SHAPEFILE,
    GEOJSON,
    GEOPACKAGE,
    KML,
    ISOXML;

    /** What is written if a plan names none. */
    public static final List<Format> DEFAULT = List.of(SHAPEFILE, GEOJSON);
  }
}
