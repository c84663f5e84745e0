package org.lynchet.prescription.intake;

import java.nio.file.Path;
import org.jspecify.annotations.Nullable;
import org.lynchet.prescription.plan.PlanFile;

/**
 * Who names files, and from where they are found.
 *
 * @param folder relative names are found from there; null for the root
 * @param planFile the plan file, or null if the command line names them
 * @param words what the folder is called in faults
 */
record NamedBy(@Nullable Path folder, @Nullable String planFile, String words) {
  /** Files that a plan names. */
  static NamedBy plan(String planFile) {
    return new NamedBy(
        Path.of(planFile).toAbsolutePath().getParent(), planFile, "the plan's folder");
  }

  /** Files on the command line. */
  static NamedBy commandLine() {
    return new NamedBy(Path.of("").toAbsolutePath(), null, "the working folder");
  }

  /** Where the name is that a key has. */
  String place(String key) {
    return planFile == null ? key : PlanFile.place(planFile, key);
  }

  /** What a name is allowed to be. */
  String allowed() {
    return "a file, its path relative to " + words;
  }
}
