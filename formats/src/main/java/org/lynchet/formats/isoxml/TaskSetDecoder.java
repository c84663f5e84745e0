package org.lynchet.formats.isoxml;

import java.math.BigDecimal;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.lynchet.formats.FaultList;
import org.lynchet.formats.FormatException;
import org.lynchet.formats.XmlElement;
import org.lynchet.formats.isoxml.TaskSet.Crop;
import org.lynchet.formats.isoxml.TaskSet.PartField;
import org.lynchet.formats.isoxml.TaskSet.Presentation;
import org.lynchet.formats.isoxml.TaskSet.Product;
import org.lynchet.formats.isoxml.TaskSet.Task;
import org.lynchet.formats.isoxml.TaskSet.Value;
import org.lynchet.formats.isoxml.TaskSet.Variety;
import org.lynchet.formats.isoxml.TaskSet.Zone;

/**
 * Makes a task set of elements. Faults are what keeps fields, their boundaries and their guidance
 * lines from being read; all else is for {@link TaskDataCheck}.
 */
final class TaskSetDecoder {
  /** The types of polygon that are a field's boundary: part-field, and main field of 4.x. */
  private static final List<String> BOUNDARY = List.of("1");

  private static final List<String> MAIN_FIELD = List.of("9");
  private static final List<String> TREATMENT_ZONE = List.of("2");

  private final TaskTree tree;
  private final FaultList faults = new FaultList();
  private final AreaDecoder areas;
  private final GuidanceDecoder guidance;

  TaskSetDecoder(TaskTree tree) {
    this.tree = tree;
    this.areas = new AreaDecoder(tree, faults);
    this.guidance = new GuidanceDecoder(tree, areas, faults);
  }

  TaskSet decode() throws FormatException {
    checkFieldIds();
    TaskSet set =
        new TaskSet(
            tree.version(),
            firstName("CTR"),
            firstName("FRM"),
            tree.all("VPN").stream().map(TaskSetDecoder::presentation).toList(),
            tree.all("PDT").stream().map(e -> new Product(id(e), name(e))).toList(),
            tree.all("CTP").stream().map(TaskSetDecoder::crop).toList(),
            tree.all("PFD").stream().map(this::partField).toList(),
            tree.all("TSK").stream().map(this::task).toList());
    faults.throwIfAny();
    return set;
  }

  /** Two fields of one id cannot be told apart. */
  private void checkFieldIds() {
    Set<String> seen = new HashSet<>();
    for (XmlElement field : tree.all("PFD")) {
      if (!seen.add(id(field))) {
        faults.add(
            "the id " + id(field) + " is there twice",
            tree.where(field),
            "each id once in the file",
            "export the task data again");
      }
    }
  }

  private String firstName(String tag) {
    return tree.all(tag).stream().map(TaskSetDecoder::name).findFirst().orElse("");
  }

  private static Presentation presentation(XmlElement e) {
    return new Presentation(
        id(e),
        IsoNumbers.decimal(e, "C", BigDecimal.ZERO),
        (int) IsoNumbers.whole(e, "D", 0),
        e.attribute("E"));
  }

  private static Crop crop(XmlElement e) {
    return new Crop(
        id(e),
        name(e),
        e.children("CVT").stream()
            .map(v -> new Variety(id(v), name(v), v.attribute("C")))
            .toList());
  }

  private PartField partField(XmlElement e) {
    var boundary = areas.area(e, BOUNDARY);
    return new PartField(
        id(e),
        e.attribute("C"),
        IsoNumbers.whole(e, "D", 0),
        boundary.isEmpty() ? areas.area(e, MAIN_FIELD) : boundary,
        guidance.lines(e));
  }

  private Task task(XmlElement e) {
    return new Task(
        id(e),
        name(e),
        e.attribute("E"),
        e.children("TZN").stream().map(this::zone).toList(),
        (int) IsoNumbers.whole(e, "H", -1),
        (int) IsoNumbers.whole(e, "I", -1),
        (int) IsoNumbers.whole(e, "J", -1));
  }

  private Zone zone(XmlElement e) {
    return new Zone(
        (int) IsoNumbers.whole(e, "A", -1),
        name(e),
        e.children("PDV").stream().map(TaskSetDecoder::value).toList(),
        areas.area(e, TREATMENT_ZONE));
  }

  private static Value value(XmlElement e) {
    return new Value(
        IsoNumbers.ddi(e), (int) IsoNumbers.whole(e, "B", -1), e.attribute("C"), e.attribute("E"));
  }

  private static String id(XmlElement e) {
    return e.attribute("A");
  }

  private static String name(XmlElement e) {
    return e.attribute("B");
  }
}
