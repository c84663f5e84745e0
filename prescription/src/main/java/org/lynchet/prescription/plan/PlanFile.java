package org.lynchet.prescription.plan;

import java.nio.file.Path;
import java.util.Optional;
import org.lynchet.prescription.fault.Faults;
import org.lynchet.prescription.fault.RejectedException;

/**
 * Reads plan files: text, then values with their places, then a plan.
 *
 * <p>A fault's place is {@code <file>:<line>:<column> <key>}, such as {@code plan.yaml:31:44
 * strips[1].centre.rate}, with the file as given; faults come in the order of the file.
 */
public final class PlanFile {
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
    PlanFaults placed = new PlanFaults(file.toString());
    PlanReading reading =
        PlanText.read(file, placed)
            .flatMap(text -> YamlTree.read(text, placed))
            .map(root -> PlanBinding.bind(root, placed))
            .orElse(new PlanReading(null, null));
    placed.addTo(faults);
    return reading;
  }

  /**
   * Where a key of a plan file stands, as faults tell it. The file is read once more for that;
   * where it has no such key, line and column are left out.
   *
   * @param file the plan file's path as given
   * @param key the keys that lead there, such as {@code field.boundary}
   */
  public static String place(String file, String key) {
    PlanFaults told = new PlanFaults(file);
    return PlanText.read(Path.of(file), told)
        .flatMap(text -> YamlTree.read(text, told))
        .flatMap(root -> root.find(key))
        .map(told::where)
        .orElse(file + " " + key);
  }
}
