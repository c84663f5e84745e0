package org.lynchet.prescription.convert;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import org.locationtech.jts.geom.Geometry;
import org.lynchet.formats.Characters;
import org.lynchet.formats.Column;
import org.lynchet.formats.Feature;
import org.lynchet.formats.FeatureTable;
import org.lynchet.formats.isoxml.TaskData;
import org.lynchet.formats.isoxml.TaskSet;
import org.lynchet.formats.isoxml.TaskSet.PartField;
import org.lynchet.formats.isoxml.TaskSet.Version;
import org.lynchet.prescription.fault.Faults;
import org.lynchet.prescription.fault.Warning;
import org.lynchet.prescription.intake.FieldOutline;
import org.lynchet.prescription.taskdata.SentPlaces;

/** Makes task data of a table of boundaries: one field for each feature with an area. */
final class FieldSet {
  private final FeatureTable table;
  private final String file;
  private final List<Warning> warnings;
  private final Faults faults;
  private final FeatureFaults wrong = new FeatureFaults();
  private final List<String> cut = new ArrayList<>();

  /**
   * Takes a table.
   *
   * @param file what it is called in faults
   * @param warnings takes what is left out or cut
   * @param faults takes what cannot be a field
   */
  FieldSet(FeatureTable table, String file, List<Warning> warnings, Faults faults) {
    this.table = table;
    this.file = file;
    this.warnings = warnings;
    this.faults = faults;
  }

  TaskSet make() {
    List<PartField> fields = new ArrayList<>();
    int areas = 0;
    for (int i = 0; i < table.features().size(); i++) {
      Geometry area = FieldOutline.polygonsOf(table.features().get(i).geometry());
      if (!area.isEmpty()) {
        areas++;
        if (isField(i, area)) {
          fields.add(field(i, area, areas));
        }
      }
    }
    wrong.tell(file, faults);
    if (areas == 0) {
      faults.add(
          "no feature with an area",
          file,
          "at least one polygon",
          "draw the fields' outlines as areas, not as lines or points");
    }
    if (Characters.XML.missing(table.name()) != null) {
      faults.add(
          "a control character in the table's name", file, "names of letters", "name it otherwise");
    }
    String name = name(table.name().isBlank() ? "fields" : table.name());
    warn(table.features().size() - areas);
    return new TaskSet(
        Version.V4_3, name, name, List.of(), List.of(), List.of(), fields, List.of());
  }

  private void warn(int leftOut) {
    if (leftOut > 0) {
      warnings.add(
          new Warning(
              Warning.Code.FEATURES_LEFT_OUT,
              leftOut
                  + (leftOut == 1 ? " feature has" : " features have")
                  + " no area and cannot be a field of task data; left out."));
    }
    if (!cut.isEmpty()) {
      warnings.add(
          new Warning(
              Warning.Code.NAME_CUT,
              "Task data holds names of at most 32 characters; cut: "
                  + String.join(", ", cut)
                  + "."));
    }
  }

  private boolean isField(int i, Geometry area) {
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
        || wrong(
            i,
            "not a valid area: " + problem,
            "rings that neither cross nor overlap",
            "redraw it there");
  }

  private boolean wrong(int i, String what, String allowed, String next) {
    wrong.add(i, what, allowed, next);
    return false;
  }

  private PartField field(int i, Geometry area, int number) {
    return new PartField(
        "PFD" + number,
        name(i, number),
        Math.round(FieldOutline.squareMetres(area, area)),
        SentPlaces.area(List.of(area)),
        List.of());
  }

  /** The first text of a feature; its number if it has none. */
  private String name(int i, int number) {
    Feature feature = table.features().get(i);
    for (int c = 0; c < table.columns().size(); c++) {
      String text = Objects.toString(feature.values().get(c), "").strip();
      if (table.columns().get(c).kind() == Column.Kind.TEXT && !text.isEmpty()) {
        String bad = Characters.XML.missing(text);
        if (bad != null) {
          wrong(i, bad + " in its name", "names of characters that XML has", "write it otherwise");
        }
        return name(text);
      }
    }
    return table.features().size() == 1 && !table.name().isBlank()
        ? name(table.name())
        : "field " + number;
  }

  private String name(String whole) {
    String name = TaskData.name(whole);
    if (!name.equals(whole) && !cut.contains(whole)) {
      cut.add(whole);
    }
    return name;
  }
}
