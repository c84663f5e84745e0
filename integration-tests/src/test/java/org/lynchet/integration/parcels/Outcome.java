package org.lynchet.integration.parcels;

import java.util.ArrayList;
import java.util.List;
import org.locationtech.jts.geom.Geometry;
import org.lynchet.formats.Fault;
import org.lynchet.integration.witness.coverage.CoverageWitness;
import org.lynchet.prescription.fault.RejectedException;
import org.lynchet.prescription.intake.FieldIntake;
import org.lynchet.prescription.plan.Plan;
import org.lynchet.prescription.zone.FieldLayout;
import org.lynchet.prescription.zone.Zone;

/**
 * What came of planning one parcel.
 *
 * @param id the parcel
 * @param faults why it was refused; empty if it was planned
 * @param zones how many zones it has
 * @param wrong what must not be: a finding about its zones, or an exception that is no refusal
 */
record Outcome(String id, List<Fault> faults, int zones, List<String> wrong) {

  /** Reads the parcel's files, lays the plan out and looks at the zones. */
  static Outcome of(String id, Plan plan) {
    try {
      FieldLayout layout = FieldLayout.of(plan, FieldIntake.read(plan));
      return new Outcome(id, List.of(), layout.zones().size(), wrong(id, layout));
    } catch (RejectedException rejected) {
      return new Outcome(id, rejected.faults(), 0, List.of());
    } catch (RuntimeException | StackOverflowError e) {
      return new Outcome(id, List.of(), 0, List.of(id + ": " + e + at(e)));
    }
  }

  /** Whether it was planned. */
  boolean planned() {
    return zones > 0;
  }

  private static List<String> wrong(String id, FieldLayout layout) {
    List<String> wrong = new ArrayList<>();
    List<Geometry> polygons = new ArrayList<>();
    double sum = 0;
    for (Zone zone : layout.zones()) {
      polygons.add(zone.polygon());
      sum += zone.areaSquareMetres();
    }
    // A coverage: every polygon valid, edges matched, no gap, the union is the field.
    CoverageWitness.inspect(polygons, layout.boundary()).forEach(f -> wrong.add(id + ": " + f));
    double field = layout.areaSquareMetres();
    if (polygons.isEmpty() || !(Math.abs(sum - field) <= 1e-9 * field)) {
      wrong.add(id + ": zones sum to " + sum + " m2, the field has " + field);
    }
    return wrong;
  }

  private static String at(Throwable e) {
    StackTraceElement[] trace = e.getStackTrace();
    return trace.length == 0 ? "" : " at " + trace[0];
  }
}
