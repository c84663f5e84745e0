package org.lynchet.prescription.plan;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.time.DateTimeException;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.lynchet.prescription.fault.Faults;
import org.lynchet.prescription.fault.RejectedException;
import org.lynchet.prescription.machine.Machine;

/** Reads plan files. */
public final class PlanFile {
  /** Far more than any plan; keeps a wrong file from filling the memory. */
  private static final long LARGEST_BYTES = 1_000_000;

  private PlanFile() {}

  /**
   * Reads a plan.
   *
   * @throws RejectedException with every fault of the file
   */
  public static Plan read(Path file) throws RejectedException {
    Faults faults = new Faults();
    PlanReading reading = read(file, faults);
    faults.throwIfAny();
    return Optional.ofNullable(reading.plan()).orElseThrow();
  }

  /** Reads what can be read of a plan, and adds every fault of the file to others. */
  public static PlanReading read(Path file, Faults faults) {
    PlanFaults placed = new PlanFaults(file.toString(), faults);
    return text(file, placed)
        .flatMap(text -> YamlTree.read(text, placed))
        .map(root -> bind(root, placed))
        .orElse(new PlanReading(null, null));
  }

  private static Optional<String> text(Path file, PlanFaults faults) {
    try {
      if (Files.isDirectory(file)) {
        faults.whole("this is a folder", "a plan file (YAML)", "name the file in it");
        return Optional.empty();
      }
      if (Files.size(file) > LARGEST_BYTES) {
        faults.whole(
            "this is no plan: the file has " + Files.size(file) + " bytes",
            "a plan file (YAML) of at most " + LARGEST_BYTES + " bytes",
            "check the name");
        return Optional.empty();
      }
      byte[] bytes = Files.readAllBytes(file);
      return Optional.of(
          StandardCharsets.UTF_8.newDecoder().decode(ByteBuffer.wrap(bytes)).toString());
    } catch (NoSuchFileException e) {
      faults.whole("no such file", "a plan file (YAML)", "check the name and the folder");
    } catch (CharacterCodingException e) {
      faults.whole("this is not UTF-8 text", "a plan file (YAML) in UTF-8", "save it as UTF-8");
    } catch (IOException e) {
      faults.whole("the file cannot be read: " + e, "a file that you may read", "check its rights");
    }
    return Optional.empty();
  }

  private static PlanReading bind(PlanNode.Mapping root, PlanFaults faults) {
    KeyReader keys = new KeyReader(root, "", faults);
    Optional<PlannedField> field = FieldSection.read(keys);
    Optional<PlannedGuidance> guidance = GuidanceSection.read(keys);
    Map<String, Machine> machines = MachineSection.read(keys);
    Optional<PlannedHeadland> headland = PlantingSections.headland(keys);
    List<PlannedStrip> strips = PlantingSections.strips(keys);
    Map<String, Product> products = PlantingSections.products(keys);
    HandoffChoices handoff = PlantingSections.handoff(keys);
    FitChoices fit = PlantingSections.fit(keys);
    Optional<LocalDate> date = date(keys);
    keys.close();
    if (faults.count() > 0 || field.isEmpty() || guidance.isEmpty()) {
      return new PlanReading(null, field.orElse(null));
    }
    Plan plan =
        new Plan(
            faults.file(),
            date.orElse(null),
            field.get(),
            guidance.get(),
            machines,
            headland.orElse(null),
            strips,
            products,
            handoff,
            fit);
    new PlanRules(plan, new PlanPlaces(root, faults)).check();
    return new PlanReading(faults.count() > 0 ? null : plan, plan.field());
  }

  private static Optional<LocalDate> date(KeyReader keys) {
    Optional<String> text = keys.findText("date");
    try {
      Optional<LocalDate> date = text.map(LocalDate::parse);
      if (date.isEmpty() || (date.get().getYear() >= 1900 && date.get().getYear() <= 2155)) {
        return date;
      }
    } catch (DateTimeException notADate) {
      // Falls through to the fault below, like a year out of range.
    }
    keys.fault(
        "date",
        "'" + text.orElse("") + "' is not a date",
        "1900-01-01 to 2155-12-31",
        "write year-month-day");
    return Optional.empty();
  }
}
