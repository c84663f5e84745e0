package org.lynchet.prescription.compare;

import java.io.Serializable;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.lynchet.prescription.driving.CropDriving;
import org.lynchet.prescription.quantity.AreaUnit;
import org.lynchet.prescription.summary.SeedOrder;
import org.lynchet.prescription.summary.Summary;
import org.lynchet.prescription.zone.FieldLayout;
import org.lynchet.prescription.zone.Zone;

/**
 * What a candidate comes to on the field.
 *
 * @param stripSquareMetres by crop, its area in strips; 0 where it has none
 * @param hours driving of all machines over their strips: in the row, across gaps and turning
 * @param passes of the planters
 * @param partialPasses of them, those narrower than their planter somewhere
 * @param seed by product
 * @param area the unit of area that is shown
 */
public record FieldFacts(
    Map<String, Double> stripSquareMetres,
    double hours,
    int passes,
    int partialPasses,
    List<SeedOrder> seed,
    AreaUnit area)
    implements Serializable {

  /** Copies the map, keeping its order, and the list. */
  public FieldFacts {
    stripSquareMetres = Collections.unmodifiableMap(new LinkedHashMap<>(stripSquareMetres));
    seed = List.copyOf(seed);
  }

  static FieldFacts of(FieldLayout layout, Summary summary) {
    Map<String, Double> areas = new LinkedHashMap<>();
    layout.plan().strips().forEach(strip -> areas.put(strip.crop(), 0.0));
    for (Zone zone : layout.zones()) {
      if (zone.kind() != Zone.Kind.HEADLAND) {
        areas.merge(zone.crop(), zone.areaSquareMetres(), Double::sum);
      }
    }
    return new FieldFacts(
        areas,
        summary.driving().all().stream()
            .map(CropDriving::chosen)
            .mapToDouble(chosen -> chosen.drivingHours())
            .sum(),
        layout.passes().size(),
        summary.partialPasses(),
        summary.seed(),
        summary.areaUnit());
  }

  /** Whether every crop of the pattern has a strip in the field. */
  public boolean hasEveryCrop() {
    return stripSquareMetres.values().stream().allMatch(area -> area > 0);
  }
}
