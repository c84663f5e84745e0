package org.lynchet.prescription.taskdata;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import org.lynchet.formats.isoxml.TaskData;
import org.lynchet.formats.isoxml.TaskSet;
import org.lynchet.formats.isoxml.TaskSet.Crop;
import org.lynchet.formats.isoxml.TaskSet.Line;
import org.lynchet.formats.isoxml.TaskSet.PartField;
import org.lynchet.formats.isoxml.TaskSet.Product;
import org.lynchet.formats.isoxml.TaskSet.Task;
import org.lynchet.formats.isoxml.TaskSet.Variety;
import org.lynchet.formats.isoxml.TaskSet.Version;
import org.lynchet.prescription.fault.Faults;
import org.lynchet.prescription.fault.RejectedException;
import org.lynchet.prescription.plan.TaskDataChoices;
import org.lynchet.prescription.zone.FieldLayout;

/** Makes task data of a field laid out, or of areas with their products and rates. */
public final class TaskSetMaker {
  private static final String FIELD_ID = "PFD1";

  private final PlantedField field;
  private final TaskDataChoices choices;
  private final List<Line> lines;
  private final Faults faults = new Faults();

  /** Ids of products by name, in the order of their first areas. */
  private final Map<String, String> products = new LinkedHashMap<>();

  private TaskSetMaker(PlantedField field, TaskDataChoices choices, List<Line> lines) {
    this.field = field;
    this.choices = choices;
    this.lines = lines;
    field.products().forEach(p -> products.put(p, "PDT" + (products.size() + 1)));
  }

  /**
   * The task data of a layout.
   *
   * @throws RejectedException if a crop has more rates than a task has zones, or two names come out
   *     the same
   */
  public static TaskSet of(FieldLayout layout) throws RejectedException {
    TaskDataChoices choices = layout.plan().handoff().taskData();
    List<Line> lines = new GuidanceLines(layout, choices.version()).all();
    return new TaskSetMaker(PlantedField.of(layout), choices, lines).make();
  }

  /**
   * The task data of a field without guidance lines, in version 4.3.
   *
   * @throws RejectedException as for a layout
   */
  public static TaskSet of(PlantedField field) throws RejectedException {
    return new TaskSetMaker(field, TaskDataChoices.DEFAULT, List.of()).make();
  }

  private TaskSet make() throws RejectedException {
    Presentations presentations = new Presentations();
    List<Task> tasks = new ArrayList<>();
    for (String crop : field.crops()) {
      tasks.add(task("TSK" + (tasks.size() + 1), crop, presentations));
    }
    SentNames.check(field, faults);
    faults.throwIfAny();
    return new TaskSet(
        choices.version(),
        TaskData.name(Objects.requireNonNullElse(choices.customer(), field.name())),
        TaskData.name(Objects.requireNonNullElse(choices.farm(), field.name())),
        presentations.all(),
        products.entrySet().stream()
            .map(e -> new Product(e.getValue(), TaskData.name(e.getKey())))
            .toList(),
        crops(),
        List.of(partField()),
        tasks);
  }

  private Task task(String id, String crop, Presentations presentations) {
    TreatmentZones zones = new TreatmentZones(field, crop, products, presentations);
    return new Task(
        id,
        TaskData.name(name(crop)),
        FIELD_ID,
        zones.all(faults),
        TreatmentZones.OFF,
        TreatmentZones.OFF,
        TreatmentZones.OFF);
  }

  private String name(String crop) {
    return crop.equals(field.name()) ? crop : (crop + " " + field.name()).strip();
  }

  private List<Crop> crops() {
    List<Crop> crops = new ArrayList<>();
    int varieties = 0;
    for (String name : field.crops()) {
      List<Variety> grown = new ArrayList<>();
      for (String product : field.products(name)) {
        varieties++;
        String id = choices.version() == Version.V4_3 ? products.getOrDefault(product, "") : "";
        grown.add(new Variety("CVT" + varieties, TaskData.name(product), id));
      }
      if (!name.isEmpty()) {
        crops.add(new Crop("CTP" + (crops.size() + 1), TaskData.name(name), grown));
      }
    }
    return crops;
  }

  private PartField partField() {
    return new PartField(
        FIELD_ID,
        TaskData.name(field.name()),
        Math.round(field.areaSquareMetres()),
        SentPlaces.area(List.of(field.boundary())),
        lines);
  }
}
