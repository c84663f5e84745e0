package org.lynchet.prescription.zone;

import java.io.Serializable;
import java.util.ArrayList;
import java.util.List;
import org.locationtech.jts.geom.Geometry;
import org.lynchet.geometry.coverage.Waterway;
import org.lynchet.geometry.guidance.Guidance;
import org.lynchet.geometry.guidance.OffsetFrame;
import org.lynchet.prescription.fault.RejectedException;
import org.lynchet.prescription.fault.Warning;
import org.lynchet.prescription.plan.Plan;
import org.lynchet.prescription.spraying.Spraying;

/**
 * A whole field laid out.
 *
 * <p>The passes, of strips and of the headland, are drawn and measured when they are first asked
 * for.
 *
 * @param plan the plan
 * @param boundary the field, longitude (x) and latitude (y) in degrees
 * @param guidance the line that machines steer by
 * @param areaSquareMetres the field's area in the plane
 * @param zones the zones, which cover the field but for waterways: by strip, then from left to
 *     right
 * @param passes the passes, left to right
 * @param spraying where sprayers run
 * @param joinedPieces what became of pieces below the minimum
 * @param warnings what deserves a second look
 * @param headlandPasses the passes of the headland, from the innermost to the outermost
 * @param waterways what is driven across but not planted
 */
public record FieldLayout(
    Plan plan,
    Geometry boundary,
    Guidance guidance,
    double areaSquareMetres,
    List<Zone> zones,
    List<DrivenPass> passes,
    Spraying spraying,
    JoinedPieces joinedPieces,
    List<Warning> warnings,
    List<HeadlandPass> headlandPasses,
    List<Waterway> waterways)
    implements Serializable {

  /** Copies the lists. */
  public FieldLayout {
    zones = List.copyOf(zones);
    passes = DeferredList.copyOf(passes);
    warnings = List.copyOf(warnings);
    headlandPasses = DeferredList.copyOf(headlandPasses);
    waterways = List.copyOf(waterways);
  }

  /** The same with further warnings. */
  public FieldLayout withWarnings(List<Warning> further) {
    List<Warning> all = new ArrayList<>(warnings);
    all.addAll(further);
    return new FieldLayout(
        plan,
        boundary,
        guidance,
        areaSquareMetres,
        zones,
        passes,
        spraying,
        joinedPieces,
        all,
        headlandPasses,
        waterways);
  }

  /** The frame of the guidance line. */
  public OffsetFrame frame() {
    return guidance.frame();
  }

  /**
   * Lays a plan out on a field, along the AB line that the field has, whatever the plan's placement
   * is.
   *
   * @throws RejectedException if the plan and the field do not go together: a management zone has
   *     no rate, part of the field lies in no management zone, or nothing of it can be planted
   */
  public static FieldLayout of(Plan plan, FieldData field) throws RejectedException {
    return new LayoutMaker(plan, field).make();
  }
}
