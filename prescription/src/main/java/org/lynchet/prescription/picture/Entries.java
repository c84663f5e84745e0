package org.lynchet.prescription.picture;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import org.lynchet.prescription.plan.PlannedHeadland;
import org.lynchet.prescription.plan.PlannedStrip;
import org.lynchet.prescription.zone.FieldLayout;
import org.lynchet.prescription.zone.Zone;

/**
 * Sorts the zones of a field by what they have in common, and gives each kind of them its look.
 *
 * <p>Entries go by crop in the plan's order, then centre, border, headland, then product and rate
 * in the order of the zones, then management zone. Within one management zone no two entries look
 * alike, up to three products or rates of one kind and sixteen crops.
 */
final class Entries {
  private static final List<Zone.Kind> KINDS =
      List.of(Zone.Kind.CENTRE, Zone.Kind.BORDER, Zone.Kind.HEADLAND);

  private final Map<Entry, List<Zone>> zones;
  private final Map<Entry, Look> looks = new HashMap<>();

  private Entries(Map<Entry, List<Zone>> zones) {
    this.zones = zones;
  }

  static Entries of(FieldLayout layout) {
    Map<Entry, List<Zone>> found = new LinkedHashMap<>();
    for (Zone zone : layout.zones()) {
      found.computeIfAbsent(Entry.of(zone), entry -> new ArrayList<>()).add(zone);
    }
    List<String> crops = crops(layout);
    List<Entry> order = new ArrayList<>(found.keySet());
    order.sort(
        Comparator.comparingInt((Entry entry) -> crops.indexOf(entry.crop()))
            .thenComparingInt(entry -> KINDS.indexOf(entry.kind()))
            .thenComparingInt(entry -> firstOfProduct(found.keySet(), entry))
            .thenComparing(entry -> Objects.requireNonNullElse(entry.managementZone(), "")));
    Map<Entry, List<Zone>> sorted = new LinkedHashMap<>();
    order.forEach(entry -> sorted.put(entry, found.getOrDefault(entry, List.of())));
    Entries entries = new Entries(sorted);
    entries.giveLooks(crops, layout.frame().headingDegrees());
    return entries;
  }

  /** The entries, in order. */
  List<Entry> list() {
    return List.copyOf(zones.keySet());
  }

  List<Zone> zones(Entry entry) {
    return zones.getOrDefault(entry, List.of());
  }

  Look look(Entry entry) {
    return Objects.requireNonNull(looks.get(entry));
  }

  /** The area of an entry in the plane. */
  double squareMetres(Entry entry) {
    return zones(entry).stream().mapToDouble(Zone::areaSquareMetres).sum();
  }

  private void giveLooks(List<String> crops, double headingDegrees) {
    Looks all = new Looks(headingDegrees);
    Map<List<Object>, Integer> seen = new HashMap<>();
    for (Entry entry : zones.keySet()) {
      List<Object> sameKind =
          List.of(
              entry.crop(), entry.kind(), Objects.requireNonNullElse(entry.managementZone(), ""));
      int variant = seen.merge(sameKind, 1, Integer::sum) - 1;
      looks.put(entry, all.look(crops.indexOf(entry.crop()), entry.kind(), variant));
    }
  }

  /** The plan's crops: those of the strips from left to right, then that of the headland. */
  static List<String> crops(FieldLayout layout) {
    Set<String> crops = new LinkedHashSet<>();
    layout.plan().strips().stream().map(PlannedStrip::crop).forEach(crops::add);
    PlannedHeadland headland = layout.plan().headland();
    if (headland != null) {
      crops.add(headland.crop());
    }
    return List.copyOf(crops);
  }

  private static int firstOfProduct(Set<Entry> entries, Entry entry) {
    int place = 0;
    for (Entry other : entries) {
      if (other.product().equals(entry.product())) {
        return place;
      }
      place++;
    }
    return place;
  }
}
