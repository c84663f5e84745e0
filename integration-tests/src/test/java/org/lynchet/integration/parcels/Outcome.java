package org.lynchet.integration.parcels;

import java.util.ArrayList;
import java.util.List;
import org.locationtech.jts.geom.Geometry;
import org.lynchet.formats.Fault;
import org.lynchet.integration.witness.Finding;
import org.lynchet.integration.witness.coverage.CoverageRule;
import org.lynchet.integration.witness.coverage.CoverageWitness;
import org.lynchet.prescription.fault.RejectedException;
import org.lynchet.prescription.intake.FieldIntake;
import org.lynchet.prescription.plan.Plan;
import org.lynchet.prescription.spraying.SprayedArea;
import org.lynchet.prescription.zone.FieldLayout;
import org.lynchet.prescription.zone.Zone;

/**
 * What came of planning one parcel.
 *
 * @param id the parcel
 * @param faults why it was refused; empty if it was planned
 * @param zones how many zones it has
 * @param wrong what must not be: a finding about its zones, or an exception that is no refusal
 * @param thin what is finer than the coordinates that are written: see {@link #of}
 */
record Outcome(String id, List<Fault> faults, int zones, List<String> wrong, List<String> thin) {

  /**
   * Vertices lie on a grid of 4 nm, and a node on the boundary moves by half a step at most:
   * parcels of some square metres can be off by this much for each metre of boundary.
   */
  private static final double GRID_METRES = 2e-9;

  private static final double METRES_PER_DEGREE = 111_320;

  /**
   * Reads the parcel's files, lays the plan out and looks at the zones.
   *
   * <p>Zones sum to the field to 1e-9. Where a boundary is narrower than the last decimal of its
   * coordinates, the tip of a needle can be lost, which is told apart as thin.
   */
  static Outcome of(String id, Plan plan) {
    try {
      FieldLayout layout = FieldLayout.of(plan, FieldIntake.read(plan));
      return looked(id, layout);
    } catch (RejectedException rejected) {
      return new Outcome(id, rejected.faults(), 0, List.of(), List.of());
    } catch (RuntimeException | StackOverflowError e) {
      return new Outcome(id, List.of(), 0, List.of(id + ": " + e + at(e)), List.of());
    }
  }

  /** Whether it was planned. */
  boolean planned() {
    return zones > 0;
  }

  private static Outcome looked(String id, FieldLayout layout) {
    List<String> wrong = new ArrayList<>();
    List<String> thin = new ArrayList<>();
    List<Geometry> polygons = new ArrayList<>();
    double sum = 0;
    for (Zone zone : layout.zones()) {
      polygons.add(zone.polygon());
      sum += zone.areaSquareMetres();
    }
    // A coverage: every polygon valid, edges matched, no gap, the union is the field.
    for (Finding finding : CoverageWitness.inspect(polygons, layout.boundary())) {
      boolean tip =
          finding.rule() == CoverageRule.SAME_OUTLINE
              && finding.where().equals("boundary of the field");
      (tip ? thin : wrong).add(id + ": " + finding);
    }
    double field = layout.areaSquareMetres();
    double off = Math.abs(sum - field);
    double grid = GRID_METRES * METRES_PER_DEGREE * layout.boundary().getLength();
    if (!(off <= Math.max(1e-9 * field, Math.max(grid, 1e-7)))) {
      wrong.add(id + ": zones sum to " + sum + " m2, the field has " + field);
    }
    double sprayed = 0;
    for (SprayedArea area : layout.spraying().areas()) {
      sprayed += area.areaSquareMetres();
    }
    if (!(Math.abs(sprayed - field) <= Math.max(1e-9 * field, Math.max(grid, 1e-7)))) {
      wrong.add(id + ": sprayed areas sum to " + sprayed + " m2, the field has " + field);
    }
    return new Outcome(id, List.of(), polygons.size(), wrong, thin);
  }

  private static String at(Throwable e) {
    StackTraceElement[] trace = e.getStackTrace();
    return trace.length == 0 ? "" : " at " + trace[0];
  }
}
