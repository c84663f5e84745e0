package org.lynchet.prescription.plan;

import java.io.Serializable;
import java.util.List;

/**
 * What is written.
 *
 * @param offZones whether the other crops' strips go into each crop's planting file at rate 0
 * @param formats the formats, in the plan's order
 * @param taskData how the format isoxml is written
 * @param papers whether cab sheet and seed sheet are written too
 */
public record HandoffChoices(
    boolean offZones, List<Format> formats, TaskDataChoices taskData, boolean papers)
    implements Serializable {

  /** Copies the list. */
  public HandoffChoices {
    formats = List.copyOf(formats);
  }

  /** Choices without papers. */
  public HandoffChoices(boolean offZones, List<Format> formats, TaskDataChoices taskData) {
    this(offZones, formats, taskData, false);
  }

  /** Choices without papers, and with the defaults of task data. */
  public HandoffChoices(boolean offZones, List<Format> formats) {
    this(offZones, formats, TaskDataChoices.DEFAULT);
  }

  /** The same in other formats. */
  public HandoffChoices withFormats(List<Format> others) {
    return new HandoffChoices(offZones, others, taskData, papers);
  }

  /** The same with papers. */
  public HandoffChoices withPapers() {
    return new HandoffChoices(offZones, formats, taskData, true);
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
