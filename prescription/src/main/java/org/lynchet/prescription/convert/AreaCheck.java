package org.lynchet.prescription.convert;

import java.util.Locale;
import org.locationtech.jts.geom.Geometry;
import org.lynchet.formats.Characters;
import org.lynchet.formats.FeatureTable;
import org.lynchet.prescription.fault.Faults;
import org.lynchet.prescription.intake.FieldOutline;

/**
 * Tells which areas and names cannot go into task data.
 *
 * @param wrong takes what is wrong with features
 */
record AreaCheck(FeatureFaults wrong) {

  /** Adds faults of a table as a whole. */
  static void checkTable(FeatureTable table, int areas, String file, Faults faults) {
    if (areas == 0) {
      faults.add(
          "no feature with an area",
          file,
          "at least one polygon",
          "draw the outlines as areas, not as lines or points");
    }
    if (Characters.XML.missing(table.name()) != null) {
      faults.add(
          "a control character in the table's name", file, "names of letters", "name it otherwise");
    }
  }

  /** Whether a feature's polygons are a valid area of the size of a field. */
  boolean isArea(int i, Geometry area) {
    if (!FieldOutline.isWithin(area, FieldOutline.HIGHEST_LATITUDE)) {
      return wrong(
          i,
          "a vertex outside of where fields are",
          "longitude -180 to 180, latitude -89 to 89",
          "check the coordinate system of the file, and that x is longitude");
    }
    double metres = FieldOutline.metresAcross(area);
    if (metres > FieldOutline.LARGEST_METRES) {
      return wrong(
          i,
          String.format(Locale.ROOT, "an area that is %.0f km across", metres / 1000),
          "a field of at most 20 km",
          "check the coordinates, or take the area out");
    }
    String problem = FieldOutline.problem(area);
    return problem == null
        || wrong(i, "not a valid area: " + problem, FieldOutline.VALID_AREA, "redraw it there");
  }

  /** Adds a fault for a name of characters that XML does not have. */
  void checkName(int i, String name) {
    String bad = Characters.XML.missing(name);
    if (bad != null) {
      wrong(i, bad + " in a name", "names of characters that XML has", "write it otherwise");
    }
  }

  private boolean wrong(int i, String what, String allowed, String next) {
    wrong.add(i, what, allowed, next);
    return false;
  }
}
