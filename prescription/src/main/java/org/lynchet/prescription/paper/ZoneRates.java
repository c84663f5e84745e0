package org.lynchet.prescription.paper;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.TreeMap;
import java.util.stream.Collectors;
import org.lynchet.prescription.machine.Planter;
import org.lynchet.prescription.quantity.SeedingRate;
import org.lynchet.prescription.summary.Summary;
import org.lynchet.prescription.zone.FieldLayout;
import org.lynchet.prescription.zone.Zone;

/** Says what one planter plants at which rate in each management zone. */
final class ZoneRates {
  private final FieldLayout layout;
  private final Summary summary;
  private final Planter planter;

  private record Part(String crop, Zone.Kind kind, String product) {}

  /** What a planter plants of a layout. */
  ZoneRates(FieldLayout layout, Summary summary, Planter planter) {
    this.layout = layout;
    this.summary = summary;
    this.planter = planter;
  }

  /**
   * A line for each crop, kind of zone and product, such as {@code corn, border, short-106: hill
   * 36,000 in 0.67 ac; sand 38,000 in 1.81 ac (seeds/ac)}; empty without management zones.
   */
  List<String> lines() {
    Map<Part, List<Zone>> parts = new LinkedHashMap<>();
    for (Zone zone : SeedPart.zonesOf(layout, planter.name())) {
      if (zone.managementZone() != null) {
        parts
            .computeIfAbsent(
                new Part(zone.crop(), zone.kind(), zone.product()), part -> new ArrayList<>())
            .add(zone);
      }
    }
    return parts.entrySet().stream().map(part -> line(part.getKey(), part.getValue())).toList();
  }

  private String line(Part part, List<Zone> zones) {
    Map<String, List<Zone>> byName =
        zones.stream()
            .collect(
                Collectors.groupingBy(
                    zone -> Objects.requireNonNull(zone.managementZone()),
                    TreeMap::new,
                    Collectors.toList()));
    List<String> units = zones.stream().map(Zone::rate).map(SeedingRate::unit).distinct().toList();
    String unit = units.size() == 1 ? units.get(0) : "";
    return part.crop()
        + ", "
        + part.kind().word()
        + ", "
        + part.product()
        + ": "
        + byName.entrySet().stream()
            .map(named -> named.getKey() + " " + rates(named.getValue(), unit))
            .collect(Collectors.joining("; "))
        + (unit.isEmpty() ? "" : " (" + unit + ")");
  }

  private String rates(List<Zone> zones, String unit) {
    String rates =
        zones.stream()
            .map(Zone::rate)
            .distinct()
            .map(
                rate ->
                    MachineText.number(rate.seeds()) + (unit.isEmpty() ? " " + rate.unit() : ""))
            .collect(Collectors.joining(" / "));
    double area = zones.stream().mapToDouble(Zone::areaSquareMetres).sum();
    return rates + " in " + PaperUnits.area(area, summary);
  }
}
