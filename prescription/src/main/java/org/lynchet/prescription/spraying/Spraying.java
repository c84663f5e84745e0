package org.lynchet.prescription.spraying;

import java.io.Serializable;
import java.util.List;
import java.util.function.Supplier;
import org.lynchet.geometry.coverage.Regions;
import org.lynchet.geometry.guidance.Guidance;
import org.lynchet.geometry.strip.Strip;
import org.lynchet.prescription.fault.Warning;
import org.lynchet.prescription.plan.Plan;

/**
 * How the crops of a field are sprayed.
 *
 * @param passes the passes, left to right
 * @param areas the sprayed areas: headland, then left to right
 * @param warnings strips that a boom does not fit
 */
public record Spraying(List<SprayPass> passes, List<SprayedArea> areas, List<Warning> warnings)
    implements Serializable {

  /** Copies the lists. */
  public Spraying {
    passes = List.copyOf(passes);
    areas = List.copyOf(areas);
    warnings = List.copyOf(warnings);
  }

  /**
   * Lays spray passes over the strips of a field; none where the plan has no sprayer for a crop.
   *
   * @param guidance the line that machines steer by
   * @param regions the field divided by headland and waterways; not asked for if nothing is sprayed
   * @param strips its strips, left to right
   */
  public static Spraying of(
      Plan plan, Guidance guidance, Supplier<Regions> regions, List<Strip> strips) {
    return CropSprayers.of(plan).isEmpty()
        ? new Spraying(List.of(), List.of(), List.of())
        : new SprayMaker(plan, guidance, strips).make(regions.get());
  }

  /** The crops that are sprayed, in the order of their areas. */
  public List<String> crops() {
    return areas.stream().map(SprayedArea::crop).distinct().toList();
  }
}
