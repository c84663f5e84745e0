package org.lynchet.prescription.convert;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Objects;
import java.util.Set;
import org.locationtech.jts.geom.Geometry;
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
  private final AreaCheck check = new AreaCheck(wrong);
  private final Set<Integer> named = new HashSet<>();
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
        if (check.isArea(i, area)) {
          fields.add(field(i, area, areas));
        }
      }
    }
    wrong.tell(file, faults);
    AreaCheck.checkTable(table, areas, file, faults);
    String name = name(table.name().isBlank() ? "fields" : table.name());
    warn(table.features().size() - areas);
    Leftovers.warn(table, named::contains, "a field of task data has a name only", warnings);
    return new TaskSet(
        Version.V4_3, name, name, List.of(), List.of(), List.of(), fields, List.of());
  }

  private void warn(int leftOut) {
    Leftovers.warn(leftOut, "cannot be a field of task data", warnings);
    if (!cut.isEmpty()) {
      warnings.add(
          new Warning(
              Warning.Code.NAME_CUT,
              "Task data holds names of at most 32 characters; cut: "
                  + String.join(", ", cut)
                  + "."));
    }
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
        check.checkName(i, text);
        named.add(c);
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
