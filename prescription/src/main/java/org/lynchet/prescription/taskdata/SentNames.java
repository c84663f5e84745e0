package org.lynchet.prescription.taskdata;

import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.lynchet.formats.isoxml.TaskData;
import org.lynchet.prescription.fault.Faults;
import org.lynchet.prescription.fault.Warning;
import org.lynchet.prescription.plan.TaskDataChoices;
import org.lynchet.prescription.zone.FieldLayout;

/** Tells which names task data cuts, and which of crops and products come out the same. */
public final class SentNames {
  private SentNames() {}

  /** A warning for each name of a plan that is cut to what task data holds. */
  public static List<Warning> warnings(FieldLayout layout) {
    TaskDataChoices choices = layout.plan().handoff().taskData();
    Map<String, Collection<String>> names = new LinkedHashMap<>();
    names.put("customer", choices.customer() == null ? List.of() : List.of(choices.customer()));
    names.put("farm", choices.farm() == null ? List.of() : List.of(choices.farm()));
    names.put("field", List.of(layout.plan().field().name()));
    names.putAll(planted(PlantedField.of(layout)));
    return warnings(names);
  }

  /** A warning for each name of a field, its crops and its products that is cut. */
  public static List<Warning> warnings(PlantedField field) {
    Map<String, Collection<String>> names = new LinkedHashMap<>();
    names.put("field", List.of(field.name()));
    names.putAll(planted(field));
    return warnings(names);
  }

  private static List<Warning> warnings(Map<String, Collection<String>> all) {
    List<Warning> warnings = new ArrayList<>();
    all.forEach(
        (kind, names) ->
            names.stream()
                .filter(name -> !TaskData.name(name).equals(name))
                .map(name -> warning(kind, name))
                .forEach(warnings::add));
    return warnings;
  }

  private static Warning warning(String kind, String name) {
    return new Warning(
        Warning.Code.NAME_CUT,
        kind
            + " "
            + name
            + " is called "
            + TaskData.name(name)
            + " in task data, which holds "
            + TaskData.LONGEST_NAME
            + " characters of a name");
  }

  /** Adds a fault for each two names that a terminal could not tell apart. */
  static void check(PlantedField field, Faults faults) {
    planted(field)
        .forEach(
            (kind, names) -> {
              Map<String, String> cut = new LinkedHashMap<>();
              for (String name : names) {
                String other = cut.putIfAbsent(TaskData.name(name), name);
                if (other != null) {
                  faults.add(
                      kind + " " + name + " and " + other + " have the same name in task data",
                      field.place(),
                      "names that differ in their first " + TaskData.LONGEST_NAME + " characters",
                      "shorten one of them, or " + field.wayOut());
                }
              }
            });
  }

  /** The names of crops and products by what they are of, each once. */
  private static Map<String, Collection<String>> planted(PlantedField field) {
    Map<String, Collection<String>> names = new LinkedHashMap<>();
    names.put("crop", field.crops());
    names.put("product", field.products());
    return names;
  }
}
