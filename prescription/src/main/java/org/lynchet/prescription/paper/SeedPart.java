package org.lynchet.prescription.paper;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Collectors;
import org.lynchet.prescription.plan.PlannedHeadland;
import org.lynchet.prescription.quantity.SeedingRate;
import org.lynchet.prescription.zone.DrivenPass;
import org.lynchet.prescription.zone.FieldLayout;
import org.lynchet.prescription.zone.Zone;

/**
 * What one planter plants of one product in one kind of zone.
 *
 * @param planter the planter's name
 * @param crop the crop
 * @param product the hybrid or variety
 * @param kind border, centre or headland
 * @param rates the different rates, in the order of the zones
 * @param areaSquareMetres the area
 * @param seeds the seeds, without reserve
 */
record SeedPart(
    String planter,
    String crop,
    String product,
    Zone.Kind kind,
    List<SeedingRate> rates,
    double areaSquareMetres,
    double seeds) {

  SeedPart {
    rates = List.copyOf(rates);
  }

  private record Key(String planter, String crop, String product, Zone.Kind kind) {}

  /** The zones in which a planter plants anything, in the layout's order. */
  static List<Zone> zonesOf(FieldLayout layout, String planter) {
    Map<Integer, String> planters = planters(layout);
    return layout.zones().stream()
        .filter(zone -> zone.rate().seeds() > 0 && planter.equals(planters.get(zone.strip())))
        .toList();
  }

  /** Who plants each strip; strip 0 is the headland. */
  private static Map<Integer, String> planters(FieldLayout layout) {
    Map<Integer, String> planters = new LinkedHashMap<>();
    for (DrivenPass pass : layout.passes()) {
      planters.put(pass.strip(), pass.machine());
    }
    PlannedHeadland headland = layout.plan().headland();
    if (headland != null) {
      planters.put(0, headland.plantedBy());
    }
    return planters;
  }

  /** The parts of a layout in which anything is planted: by planter, in the order of its zones. */
  static List<SeedPart> of(FieldLayout layout) {
    Map<Key, List<Zone>> zones = new LinkedHashMap<>();
    for (String planter : layout.plan().machines().keySet()) {
      for (Zone zone : zonesOf(layout, planter)) {
        Key key = new Key(planter, zone.crop(), zone.product(), zone.kind());
        zones.computeIfAbsent(key, k -> new ArrayList<>()).add(zone);
      }
    }
    return zones.entrySet().stream().map(entry -> of(entry.getKey(), entry.getValue())).toList();
  }

  private static SeedPart of(Key key, List<Zone> zones) {
    return new SeedPart(
        key.planter(),
        key.crop(),
        key.product(),
        key.kind(),
        zones.stream().map(Zone::rate).distinct().toList(),
        zones.stream().mapToDouble(Zone::areaSquareMetres).sum(),
        zones.stream().mapToDouble(Zone::seeds).sum());
  }

  /** The rates, those on one unit of area together, such as {@code 120,000, 150,000 seeds/ac}. */
  static String words(List<SeedingRate> rates) {
    return rates.stream()
        .collect(Collectors.groupingBy(SeedingRate::unit, LinkedHashMap::new, Collectors.toList()))
        .entrySet()
        .stream()
        .map(
            entry ->
                entry.getValue().stream()
                        .map(rate -> MachineText.number(rate.seeds()))
                        .collect(Collectors.joining(" / "))
                    + " "
                    + entry.getKey())
        .collect(Collectors.joining("; "));
  }

  /** The units that hold the seeds with reserve, as parts of units, such as {@code 4.3}. */
  static String units(double seeds, double reserve, int seedsPerUnit) {
    return String.format(Locale.ROOT, "%,.1f", seeds * (1 + reserve) / seedsPerUnit);
  }
}
