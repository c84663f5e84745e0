package org.lynchet.prescription.handoff;

import static org.lynchet.prescription.zone.SamplePlans.field;

import java.nio.file.Path;
import java.util.List;
import org.lynchet.prescription.fault.Faults;
import org.lynchet.prescription.summary.Summary;
import org.lynchet.prescription.summary.WrittenFile;
import org.lynchet.prescription.zone.FieldLayout;
import org.lynchet.prescription.zone.SamplePlans;

/** Writes plans on one invented field. */
final class SampleOutput {
  /** A slanted field with a hole, in metres. */
  static final String FIELD =
      "POLYGON ((0 0, 60 -10, 80 200, 10 220, 0 0), (20 40, 30 80, 40 40, 20 40))";

  private SampleOutput() {}

  /** Lays a plan out on the field and writes it. */
  static List<WrittenFile> write(SamplePlans plans, Path target) throws Exception {
    FieldLayout layout = FieldLayout.of(plans.plan(), field(FIELD));
    return Handoff.of(layout, Summary.of(layout)).write(target, false);
  }

  /** What is said of a place to write to. */
  static List<String> placeFaults(Path target, boolean force) {
    Faults faults = new Faults();
    Handoff.checkPlace(target, force, faults);
    return faults.list().stream().map(fault -> fault.what()).toList();
  }
}
