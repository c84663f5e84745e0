package org.lynchet.prescription.workflow;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.UnaryOperator;
import org.lynchet.prescription.fault.Faults;
import org.lynchet.prescription.fault.RejectedException;
import org.lynchet.prescription.fault.Warning;
import org.lynchet.prescription.handoff.ApplicatorFolder;
import org.lynchet.prescription.handoff.HandoffException;
import org.lynchet.prescription.intake.NeighbourFiles;
import org.lynchet.prescription.quantity.AreaUnit;
import org.lynchet.prescription.setback.Neighbour;
import org.lynchet.prescription.setback.SprayPlan;
import org.lynchet.prescription.summary.WrittenFile;
import org.lynchet.prescription.workflow.Workflow.Prepared;
import org.lynchet.prescription.zone.FieldLayout;

/**
 * Takes a plan file to what a custom applicator gets of it.
 *
 * @param layout the field laid out
 * @param spray what is sprayed once setbacks are kept
 * @param unit acres or hectares, as in the plan
 * @param warnings what deserves a second look in what concerns spraying
 */
public record ApplicatorHandoff(
    FieldLayout layout, SprayPlan spray, AreaUnit unit, List<Warning> warnings) {

  /** Copies the list. */
  public ApplicatorHandoff {
    warnings = List.copyOf(warnings);
  }

  /**
   * Reads a plan file and everything that it names, lays the field out, and keeps the setbacks.
   *
   * @param target where it will be written: a folder, or a file whose name ends with .zip
   * @param force whether an earlier one there may be replaced
   * @throws RejectedException with every fault
   */
  public static ApplicatorHandoff prepare(Path planFile, Path target, boolean force)
      throws RejectedException {
    Faults faults = new Faults();
    ApplicatorFolder.checkPlace(target, force, faults);
    Prepared prepared = Workflow.prepare(planFile, UnaryOperator.identity(), faults);
    FieldLayout layout = prepared.layout();
    List<Warning> warnings = new ArrayList<>(layout.spraying().warnings());
    Optional<List<Neighbour>> neighbours = Optional.empty();
    try {
      neighbours = Optional.of(NeighbourFiles.read(layout.plan(), layout.boundary(), warnings));
    } catch (RejectedException rejected) {
      faults.addAll(rejected);
    }
    if (layout.spraying().crops().isEmpty()) {
      faults.add(
          "the plan has no sprayer, so nothing is sprayed",
          planFile + " machines",
          "a machine of kind sprayer that works in a crop of the strips",
          "add one, such as sprayer: {kind: sprayer, boom: 90 ft, section: 10 ft}");
    }
    faults.throwIfAny();
    SprayPlan spray = SprayPlan.of(layout, neighbours.orElseThrow());
    warnings.addAll(spray.warnings());
    return new ApplicatorHandoff(layout, spray, prepared.summary().areaUnit(), warnings);
  }

  /**
   * Writes it; the target changes only if all goes well.
   *
   * @return the files written
   * @throws RejectedException if the file system refuses
   * @throws HandoffException if a file does not read back as meant
   */
  public List<WrittenFile> write(Path target) throws RejectedException, HandoffException {
    return new ApplicatorFolder(layout, spray, unit).write(target);
  }
}
