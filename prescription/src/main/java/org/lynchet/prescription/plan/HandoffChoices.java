package org.lynchet.prescription.plan;

import java.io.Serializable;
import java.util.List;
import java.util.Locale;
import org.jspecify.annotations.Nullable;
import org.lynchet.formats.FileFormat;
import org.lynchet.formats.geojson.GeoJson;
import org.lynchet.formats.geopackage.GeoPackage;
import org.lynchet.formats.isoxml.TaskData;
import org.lynchet.formats.kml.Kml;
import org.lynchet.formats.shapefile.Shapefile;
import org.lynchet.prescription.quantity.Length;

/**
 * What is written.
 *
 * @param offZones whether the other crops' strips go into each crop's planting file at rate 0
 * @param formats the formats, in the plan's order
 * @param taskData how the format isoxml is written
 * @param papers whether cab sheet and seed sheet are written too
 * @param limits what the receiving terminal can take
 * @param simplify the tolerance by which vertices of zones are thinned, or null if they are not
 */
public record HandoffChoices(
    boolean offZones,
    List<Format> formats,
    TaskDataChoices taskData,
    boolean papers,
    TerminalLimits limits,
    @Nullable Length simplify)
    implements Serializable {

  /** Copies the list. */
  public HandoffChoices {
    formats = List.copyOf(formats);
  }

  /** Choices without papers, limits and thinning. */
  public HandoffChoices(boolean offZones, List<Format> formats, TaskDataChoices taskData) {
    this(offZones, formats, taskData, false, TerminalLimits.NONE, null);
  }

  /** The same, with the defaults of task data. */
  public HandoffChoices(boolean offZones, List<Format> formats) {
    this(offZones, formats, TaskDataChoices.DEFAULT);
  }

  /** The same in other formats. */
  public HandoffChoices withFormats(List<Format> others) {
    return new HandoffChoices(offZones, others, taskData, papers, limits, simplify);
  }

  /** The same with papers. */
  public HandoffChoices withPapers() {
    return new HandoffChoices(offZones, formats, taskData, true, limits, simplify);
  }

  /** The formats that can be written, each with its word in plans and on the command line. */
  public enum Format {
    SHAPEFILE(Shapefile.FORMAT),
    GEOJSON(GeoJson.FORMAT),
    GEOPACKAGE(GeoPackage.FORMAT),
    KML(Kml.FORMAT),
    ISOXML(TaskData.FORMAT);

    /** What is written if a plan names none. */
    public static final List<Format> DEFAULT = List.of(SHAPEFILE, GEOJSON);

    @SuppressWarnings("ImmutableEnumChecker") // Formats have no state.
    private final FileFormat file;

    Format(FileFormat file) {
      this.file = file;
    }

    /** What there is to know of its files. */
    public FileFormat file() {
      return file;
    }

    /** The word in small letters. */
    @Override
    public String toString() {
      return name().toLowerCase(Locale.ROOT);
    }
  }
}
