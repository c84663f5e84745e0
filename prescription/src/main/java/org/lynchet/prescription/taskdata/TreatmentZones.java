package org.lynchet.prescription.taskdata;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.MultiPolygon;
import org.lynchet.formats.isoxml.TaskData;
import org.lynchet.formats.isoxml.TaskSet;
import org.lynchet.formats.isoxml.TaskSet.Value;
import org.lynchet.prescription.fault.Faults;
import org.lynchet.prescription.quantity.AreaUnit;
import org.lynchet.prescription.zone.FieldLayout;
import org.lynchet.prescription.zone.Zone;

/**
 * Makes the treatment zones of one crop's task: the off zone, and one for each product and rate,
 * whatever the number of strips.
 */
final class TreatmentZones {
  /** The code of the off zone. */
  static final int OFF = 0;

  /** Codes run from 0 to 254. */
  private static final int MOST = 255;

  private static final MultiPolygon NOWHERE = new GeometryFactory().createMultiPolygon();

  private final FieldLayout layout;
  private final String crop;
  private final Map<String, String> products;
  private final String presentation;

  TreatmentZones(
      FieldLayout layout, String crop, Map<String, String> products, Presentations presentations) {
    this.layout = layout;
    this.crop = crop;
    this.products = products;
    AreaUnit per =
        layout.zones().stream()
            .filter(zone -> zone.crop().equals(crop))
            .map(zone -> zone.rate().per())
            .findFirst()
            .orElse(AreaUnit.HECTARE);
    this.presentation = presentations.id(per);
  }

  /** What a treatment zone is of. */
  private record Setting(String product, SentRate rate) {}

  /** The zones in the order of their codes; faults if there are too many. */
  List<TaskSet.Zone> all(Faults faults) {
    Map<Setting, List<Geometry>> areas = new LinkedHashMap<>();
    List<Geometry> off = new ArrayList<>();
    for (Zone zone : layout.zones()) {
      if (!zone.crop().equals(crop)) {
        off.add(zone.polygon());
      } else {
        Setting setting = new Setting(zone.product(), SentRate.of(zone.rate()));
        areas.computeIfAbsent(setting, s -> new ArrayList<>()).add(zone.polygon());
      }
    }
    layout.waterways().forEach(way -> off.add(way.polygon()));
    if (areas.size() >= MOST) {
      faults.add(
          crop + " has " + areas.size() + " different products and rates",
          layout.plan().file() + " handoff.formats",
          "at most " + (MOST - 1) + " in one task",
          "use fewer rates, or leave out isoxml");
      return List.of();
    }
    List<TaskSet.Zone> zones = new ArrayList<>();
    boolean drawn = layout.plan().handoff().offZones() && !off.isEmpty();
    zones.add(zone(OFF, "off", "", new SentRate(0), drawn ? SentPlaces.area(off) : NOWHERE));
    areas.forEach(
        (setting, polygons) ->
            zones.add(
                zone(
                    zones.size(),
                    setting.product(),
                    products.getOrDefault(setting.product(), ""),
                    setting.rate(),
                    SentPlaces.area(polygons))));
    return zones;
  }

  private TaskSet.Zone zone(
      int code, String name, String product, SentRate rate, MultiPolygon area) {
    Value value = new Value(SentRate.DDI, rate.raw(), product, presentation);
    return new TaskSet.Zone(code, TaskData.name(name), List.of(value), area);
  }
}
