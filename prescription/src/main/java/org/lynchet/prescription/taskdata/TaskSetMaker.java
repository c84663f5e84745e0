package org.lynchet.prescription.taskdata;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import org.lynchet.formats.isoxml.TaskData;
import org.lynchet.formats.isoxml.TaskSet;
import org.lynchet.formats.isoxml.TaskSet.Crop;
import org.lynchet.formats.isoxml.TaskSet.PartField;
import org.lynchet.formats.isoxml.TaskSet.Product;
import org.lynchet.formats.isoxml.TaskSet.Task;
import org.lynchet.formats.isoxml.TaskSet.Variety;
import org.lynchet.formats.isoxml.TaskSet.Version;
import org.lynchet.prescription.fault.Faults;
import org.lynchet.prescription.fault.RejectedException;
import org.lynchet.prescription.plan.TaskDataChoices;
import org.lynchet.prescription.zone.FieldLayout;
import org.lynchet.prescription.zone.Zone;

/** Makes task data of a field laid out. */
public final class TaskSetMaker {
  private static final String FIELD_ID = "PFD1";

  private final FieldLayout layout;
  private final TaskDataChoices choices;
  private final Faults faults = new Faults();

  /** Ids of products by name, in the order of their first zones. */
  private final Map<String, String> products = new LinkedHashMap<>();

  private TaskSetMaker(FieldLayout layout) {
    this.layout = layout;
    this.choices = layout.plan().handoff().taskData();
    for (Zone zone : layout.zones()) {
      products.computeIfAbsent(zone.product(), product -> "PDT" + (products.size() + 1));
    }
  }

  /**
   * The task data of a layout.
   *
   * @throws RejectedException if a crop has more rates than a task has zones, or two names come out
   *     the same
   */
  public static TaskSet of(FieldLayout layout) throws RejectedException {
    return new TaskSetMaker(layout).make();
  }

  private TaskSet make() throws RejectedException {
    Presentations presentations = new Presentations();
    List<Task> tasks = new ArrayList<>();
    List<String> crops = layout.zones().stream().map(Zone::crop).distinct().toList();
    for (String crop : crops) {
      tasks.add(task("TSK" + (tasks.size() + 1), crop, presentations));
    }
    SentNames.check(layout, faults);
    faults.throwIfAny();
    String field = layout.plan().field().name();
    return new TaskSet(
        choices.version(),
        TaskData.name(Objects.requireNonNullElse(choices.customer(), field)),
        TaskData.name(Objects.requireNonNullElse(choices.farm(), field)),
        presentations.all(),
        products.entrySet().stream()
            .map(e -> new Product(e.getValue(), TaskData.name(e.getKey())))
            .toList(),
        crops(crops),
        List.of(partField(field)),
        tasks);
  }

  private Task task(String id, String crop, Presentations presentations) {
    String name = TaskData.name(crop + " " + layout.plan().field().name());
    TreatmentZones zones = new TreatmentZones(layout, crop, products, presentations);
    return new Task(
        id,
        name,
        FIELD_ID,
        zones.all(faults),
        TreatmentZones.OFF,
        TreatmentZones.OFF,
        TreatmentZones.OFF);
  }

  private List<Crop> crops(List<String> names) {
    List<Crop> crops = new ArrayList<>();
    int varieties = 0;
    for (String name : names) {
      Set<String> own = new LinkedHashSet<>();
      layout.zones().stream().filter(z -> z.crop().equals(name)).forEach(z -> own.add(z.product()));
      List<Variety> grown = new ArrayList<>();
      for (String product : own) {
        varieties++;
        String id = choices.version() == Version.V4_3 ? products.getOrDefault(product, "") : "";
        grown.add(new Variety("CVT" + varieties, TaskData.name(product), id));
      }
      crops.add(new Crop("CTP" + (crops.size() + 1), TaskData.name(name), grown));
    }
    return crops;
  }

  private PartField partField(String name) {
    return new PartField(
        FIELD_ID,
        TaskData.name(name),
        Math.round(layout.areaSquareMetres()),
        SentPlaces.area(List.of(layout.boundary())),
        new GuidanceLines(layout, choices.version()).all());
  }
}
