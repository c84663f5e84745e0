package org.lynchet.formats.isoxml;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.lynchet.formats.DeclaredCrs;
import org.lynchet.formats.FaultList;
import org.lynchet.formats.Feature;
import org.lynchet.formats.FeatureReader;
import org.lynchet.formats.FeatureTable;
import org.lynchet.formats.FormatException;
import org.lynchet.formats.NamedChoice;
import org.lynchet.formats.XmlElement;

/**
 * Reads the treatment zones of tasks as a table: a feature for each polygon and value of a zone; or
 * the boundary of a field. What a task leaves unplanted and another one plants is there once, as
 * the other has it.
 */
final class ZoneTableReader implements FeatureReader {
  private static final NamedChoice<XmlElement> CHOICE =
      new NamedChoice<>(
          "part",
          part -> part.attribute("A"),
          part -> part.attribute("A") + " (" + part.attribute(isTask(part) ? "B" : "C") + ")",
          "task data with a task (TSK) or a field (PFD)",
          "name one after the file, as in taskdata.zip#TSK1 or taskdata.zip#PFD1");

  private final String id;

  /**
   * Takes the id of a task, such as TSK1, or of a field, such as PFD1; empty for all tasks, or the
   * only field where none has zones.
   */
  ZoneTableReader(String id) {
    this.id = id;
  }

  @Override
  public FeatureTable read(Path file) throws FormatException {
    try (TaskFiles files = TaskFiles.open(file)) {
      TaskTree tree = TaskTree.read(files);
      List<XmlElement> tasks = tree.all("TSK");
      List<XmlElement> fields = tree.all("PFD");
      boolean isField =
          id.isEmpty()
              ? tasks.stream().noneMatch(task -> hasPolygons(task) || hasGrid(task))
              : fields.stream().anyMatch(field -> field.attribute("A").equals(id));
      if (isField) {
        return PartFieldReader.table(tree, id, file.toString());
      }
      if (id.isEmpty()) {
        return table(tree, tasks);
      }
      List<XmlElement> parts = new ArrayList<>(tasks);
      parts.addAll(fields);
      return table(tree, List.of(CHOICE.choose(parts, id, file.toString())));
    }
  }

  private static boolean isTask(XmlElement part) {
    return part.name().equals("TSK");
  }

  private static boolean hasPolygons(XmlElement task) {
    return task.children("TZN").stream().anyMatch(zone -> !zone.children("PLN").isEmpty());
  }

  private static boolean hasGrid(XmlElement task) {
    return !task.children("GRD").isEmpty();
  }

  private static FeatureTable table(TaskTree tree, List<XmlElement> tasks) throws FormatException {
    FaultList faults = new FaultList();
    ZoneDecoder zones = new ZoneDecoder(tree, faults);
    List<ZoneDecoder.Row> rows = new ArrayList<>();
    for (XmlElement task : tasks) {
      if (hasGrid(task)) {
        faults.add(
            "the rates of the task are in a grid, which is not read",
            tree.where(task),
            "treatment zones drawn as polygons",
            "export them as zones, or name another task or a field, as in taskdata.zip#PFD1");
      }
      rows.addAll(zones.rows(task));
    }
    faults.throwIfAny();
    String name = tasks.size() == 1 ? tasks.get(0).attribute("B") : "zones";
    return new FeatureTable(
        name.isBlank() ? "zones" : name, DeclaredCrs.LON_LAT, ZoneDecoder.COLUMNS, once(rows));
  }

  /** Leaves out an unplanted area that another row has. */
  private static List<Feature> once(List<ZoneDecoder.Row> rows) {
    Set<Object> seen = new HashSet<>();
    rows.stream().filter(row -> !row.off()).forEach(row -> seen.add(row.polygon().norm()));
    return rows.stream()
        .filter(row -> !row.off() || seen.add(row.polygon().norm()))
        .map(ZoneDecoder.Row::feature)
        .toList();
  }
}
