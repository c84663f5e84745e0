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

  private final PlantedField field;
  private final String crop;
  private final Map<String, String> products;
  private final String presentation;

  /**
   * Gets ready for one crop.
   *
   * @param products ids of products by name
   * @param presentations gives the one of the unit of the crop's first rate
   */
  TreatmentZones(
      PlantedField field, String crop, Map<String, String> products, Presentations presentations) {
    this.field = field;
    this.crop = crop;
    this.products = products;
    AreaUnit per =
        field.areas().stream()
            .filter(area -> area.crop().equals(crop))
            .map(area -> area.rate().per())
            .findFirst()
            .orElse(AreaUnit.HECTARE);
    this.presentation = presentations.id(per);
  }

  /** What a treatment zone is of. */
  private record Setting(String product, SentRate rate) {}

  /** The zones in the order of their codes; faults if there are too many. */
  List<TaskSet.Zone> all(Faults faults) {
    Map<Setting, List<Geometry>> areas = new LinkedHashMap<>();
    for (PlantedArea area : field.areas()) {
      if (area.crop().equals(crop)) {
        Setting setting = new Setting(area.product(), SentRate.of(area.rate()));
        areas.computeIfAbsent(setting, s -> new ArrayList<>()).add(area.polygons());
      }
    }
    if (areas.size() >= MOST) {
      faults.add(
          crop + " has " + areas.size() + " different products and rates",
          field.place(),
          "at most " + (MOST - 1) + " in one task",
          "use fewer rates, or " + field.wayOut());
      return List.of();
    }
    List<TaskSet.Zone> zones = new ArrayList<>();
    List<Geometry> off = field.offFor(crop);
    MultiPolygon drawn = off.isEmpty() ? NOWHERE : SentPlaces.area(off);
    zones.add(zone(OFF, "off", "", new SentRate(0), drawn));
    areas.forEach(
        (setting, polygons) ->
            zones.add(
                zone(
                    zones.size(),
                    setting.product().isEmpty() ? crop : setting.product(),
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
