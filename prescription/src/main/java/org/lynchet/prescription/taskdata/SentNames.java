package org.lynchet.prescription.taskdata;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.lynchet.formats.isoxml.TaskData;
import org.lynchet.prescription.fault.Faults;
import org.lynchet.prescription.fault.Warning;
import org.lynchet.prescription.zone.FieldLayout;
import org.lynchet.prescription.zone.Zone;

/** Tells which names of crops and products task data cuts, and which of them come out the same. */
public final class SentNames {
  private SentNames() {}

  /** A warning for each crop or product whose name is cut to what task data holds. */
  public static List<Warning> warnings(FieldLayout layout) {
    List<Warning> warnings = new ArrayList<>();
    names(layout)
        .forEach(
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
            + " in task data, which holds 32 characters of a name");
  }

  /** Adds a fault for each two names that a terminal could not tell apart. */
  static void check(FieldLayout layout, Faults faults) {
    names(layout)
        .forEach(
            (kind, names) -> {
              Map<String, String> cut = new LinkedHashMap<>();
              for (String name : names) {
                String other = cut.putIfAbsent(TaskData.name(name), name);
                if (other != null) {
                  faults.add(
                      kind + " " + name + " and " + other + " have the same name in task data",
                      layout.plan().file() + " handoff.formats",
                      "names that differ in their first 32 characters",
                      "shorten one of them, or leave out isoxml");
                }
              }
            });
  }

  /** The names of the layout by what they are of, each once. */
  private static Map<String, Set<String>> names(FieldLayout layout) {
    Set<String> crops = new LinkedHashSet<>();
    Set<String> products = new LinkedHashSet<>();
    for (Zone zone : layout.zones()) {
      crops.add(zone.crop());
      products.add(zone.product());
    }
    Map<String, Set<String>> names = new LinkedHashMap<>();
    names.put("crop", crops);
    names.put("product", products);
    return names;
  }
}
