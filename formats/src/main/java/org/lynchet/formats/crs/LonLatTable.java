package org.lynchet.formats.crs;

import java.util.List;
import org.lynchet.formats.FeatureTable;

/**
 * A table in longitude and latitude.
 *
 * @param table its coordinate system is {@link org.lynchet.formats.DeclaredCrs#LON_LAT}
 * @param notes what the user should know about how it came to be so, as whole sentences
 */
public record LonLatTable(FeatureTable table, List<String> notes) {
  /** Copies the notes. */
  public LonLatTable {
    notes = List.copyOf(notes);
  }
}
