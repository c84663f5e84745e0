package org.lynchet.prescription.workflow;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.function.UnaryOperator;
import org.lynchet.prescription.fault.Faults;
import org.lynchet.prescription.fault.RejectedException;
import org.lynchet.prescription.handoff.Handoff;
import org.lynchet.prescription.handoff.HandoffException;
import org.lynchet.prescription.handoff.LimitCheck;
import org.lynchet.prescription.intake.FieldIntake;
import org.lynchet.prescription.placement.PlacementResult;
import org.lynchet.prescription.placement.PlacementSearch;
import org.lynchet.prescription.plan.HandoffChoices.Format;
import org.lynchet.prescription.plan.Plan;
import org.lynchet.prescription.plan.PlanFile;
import org.lynchet.prescription.plan.PlanReading;
import org.lynchet.prescription.plan.PlannedField;
import org.lynchet.prescription.quantity.Length;
import org.lynchet.prescription.summary.Summary;
import org.lynchet.prescription.summary.WrittenFile;
import org.lynchet.prescription.taskdata.SentNames;
import org.lynchet.prescription.zone.FieldData;
import org.lynchet.prescription.zone.FieldLayout;
import org.lynchet.prescription.zone.ThinnedZones;

/** Takes a plan file to prescriptions, each step a pure function of the one before. */
public final class Workflow {
  private Workflow() {}

  /**
   * A plan laid out and added up.
   *
   * @param layout the field laid out
   * @param summary what it comes to
   * @param handoff what is written of it
   */
  public record Prepared(FieldLayout layout, Summary summary, Handoff handoff) {}

  /**
   * Reads a plan file and everything that it names, lays the field out, and makes sure that the
   * formats can hold it.
   *
   * @param change what the command line asks for in place of the plan
   * @throws RejectedException with every fault of the plan, or else of its data, or else of what is
   *     to be written
   */
  public static Prepared prepare(Path planFile, UnaryOperator<Plan> change)
      throws RejectedException {
    Plan plan = change.apply(readPlan(planFile));
    FieldData field = FieldIntake.read(plan);
    Optional<PlacementResult> placement = PlacementSearch.of(plan, field);
    FieldData placed = placement.map(chosen -> field.withFrame(chosen.frame())).orElse(field);
    FieldLayout layout = thinned(FieldLayout.of(plan, placed));
    if (plan.handoff().formats().contains(Format.ISOXML)) {
      layout = layout.withWarnings(SentNames.warnings(layout));
    }
    layout = layout.withWarnings(LimitCheck.warnings(layout));
    Summary summary = Summary.of(layout, placement.orElse(null));
    return new Prepared(layout, summary, Handoff.of(layout, summary));
  }

  private static FieldLayout thinned(FieldLayout layout) {
    Length simplify = layout.plan().handoff().simplify();
    return simplify == null ? layout : ThinnedZones.of(layout, simplify.metres());
  }

  /** Reads a plan; if it has faults, those of the field's files are reported with them. */
  private static Plan readPlan(Path planFile) throws RejectedException {
    Faults faults = new Faults();
    PlanReading reading = PlanFile.read(planFile, faults);
    PlannedField field = reading.field();
    if (reading.plan() == null && field != null) {
      FieldIntake.check(planFile.toString(), field, faults);
    }
    faults.throwIfAny();
    return Optional.ofNullable(reading.plan()).orElseThrow();
  }

  /**
   * The same, for writing: what is wrong with the output folder is reported with the rest.
   *
   * @param folder where the output will go
   * @param force whether an earlier output there may be replaced
   * @param change what the command line asks for in place of the plan
   * @throws RejectedException with every fault
   */
  public static Prepared prepareFor(
      Path folder, boolean force, Path planFile, UnaryOperator<Plan> change)
      throws RejectedException {
    Faults faults = new Faults();
    Handoff.checkPlace(folder, force, faults);
    return prepare(planFile, change, faults);
  }

  /** The same, its faults reported with those that there are. */
  static Prepared prepare(Path planFile, UnaryOperator<Plan> change, Faults faults)
      throws RejectedException {
    Optional<Prepared> prepared = Optional.empty();
    try {
      prepared = Optional.of(prepare(planFile, change));
    } catch (RejectedException rejected) {
      faults.addAll(rejected);
    }
    faults.throwIfAny();
    return prepared.orElseThrow();
  }

  /**
   * Writes everything of a plan into its output folder, which changes only if all goes well.
   *
   * @param png whether the map is drawn as map.png too
   * @return the files written
   * @throws RejectedException if the file system refuses
   * @throws HandoffException if a file does not read back as meant
   */
  public static List<WrittenFile> write(Prepared prepared, Path folder, boolean png)
      throws RejectedException, HandoffException {
    return prepared.handoff().write(folder, png);
  }
}
