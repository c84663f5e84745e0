package org.lynchet.formats.isoxml;

import org.lynchet.formats.XmlOutput;
import org.lynchet.formats.isoxml.TaskSet.Crop;
import org.lynchet.formats.isoxml.TaskSet.PartField;
import org.lynchet.formats.isoxml.TaskSet.Task;
import org.lynchet.formats.isoxml.TaskSet.Value;
import org.lynchet.formats.isoxml.TaskSet.Variety;
import org.lynchet.formats.isoxml.TaskSet.Version;
import org.lynchet.formats.isoxml.TaskSet.Zone;

/** Writes a whole set of task data as TASKDATA.XML. */
final class TaskSetEncoder {
  private static final String CUSTOMER = "CTR1";
  private static final String FARM = "FRM1";
  private static final int BOUNDARY = 1;
  private static final int TREATMENT_ZONE = 2;
  private static final int PLANNED = 1;

  /** Written on the farm's side, not by a machine. */
  private static final int FARM_SIDE = 1;

  private final TaskSet set;
  private final boolean current;
  private final XmlOutput out = new XmlOutput();
  private final AreaEncoder areas;
  private final GuidanceEncoder guidance;

  TaskSetEncoder(TaskSet set) {
    this.set = set;
    this.current = set.version() == Version.V4_3;
    this.areas = new AreaEncoder(out, set.version());
    this.guidance = new GuidanceEncoder(out, areas);
  }

  byte[] encode() {
    out.start("ISO11783_TaskData");
    out.attribute("VersionMajor", current ? 4 : 3).attribute("VersionMinor", 3);
    out.attribute("ManagementSoftwareManufacturer", "Lynchet");
    out.attribute("ManagementSoftwareVersion", "1");
    out.attribute("DataTransferOrigin", FARM_SIDE);
    named("CTR", CUSTOMER, set.customer()).end();
    named("FRM", FARM, set.farm()).attribute("I", CUSTOMER).end();
    for (TaskSet.Presentation shown : set.presentations()) {
      out.start("VPN").attribute("A", shown.id()).attribute("B", 0);
      out.attribute("C", IsoText.decimal(shown.scale())).attribute("D", shown.decimals());
      out.attribute("E", IsoText.name(shown.unit())).end();
    }
    set.products().forEach(product -> named("PDT", product.id(), product.name()).end());
    set.crops().forEach(this::crop);
    set.partFields().forEach(this::partField);
    set.tasks().forEach(this::task);
    return out.end().toBytes();
  }

  private XmlOutput named(String tag, String id, String name) {
    return out.start(tag).attribute("A", id).attribute("B", IsoText.name(name));
  }

  private void crop(Crop crop) {
    named("CTP", crop.id(), crop.name());
    for (Variety variety : crop.varieties()) {
      named("CVT", variety.id(), variety.name());
      out.attribute("C", current ? variety.product() : "").end();
    }
    out.end();
  }

  private void partField(PartField field) {
    out.start("PFD").attribute("A", field.id()).attribute("C", IsoText.name(field.name()));
    out.attribute("D", field.areaSquareMetres());
    out.attribute("E", CUSTOMER).attribute("F", FARM);
    areas.write(field.boundary(), BOUNDARY);
    guidance.write(field, set.version());
    out.end();
  }

  private void task(Task task) {
    named("TSK", task.id(), task.name());
    out.attribute("C", CUSTOMER).attribute("D", FARM).attribute("E", task.partField());
    out.attribute("G", PLANNED).attribute("H", task.defaultZone());
    out.attribute("I", task.lostZone()).attribute("J", task.outsideZone());
    task.zones().forEach(this::zone);
    out.end();
  }

  private void zone(Zone zone) {
    out.start("TZN").attribute("A", zone.code()).attribute("B", IsoText.name(zone.name()));
    for (Value value : zone.values()) {
      out.start("PDV").attribute("A", IsoText.ddi(value.ddi())).attribute("B", value.value());
      out.attribute("C", value.product()).attribute("E", value.presentation()).end();
    }
    areas.write(zone.area(), TREATMENT_ZONE);
    out.end();
  }
}
