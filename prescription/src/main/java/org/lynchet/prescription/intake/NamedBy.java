package org.lynchet.prescription.intake;

import java.nio.file.Path;
import org.jspecify.annotations.Nullable;

/**
 * Who names files, and from where they are found.
 *
 * @param folder relative names are found from there; null for the root
 * @param place where faults of a name are, before its key: the plan's file and a blank, or nothing
 * @param words what the folder is called in faults
 */
record NamedBy(@Nullable Path folder, String place, String words) {
  /** Files that a plan names. */
  static NamedBy plan(String planFile) {
    return new NamedBy(
        Path.of(planFile).toAbsolutePath().getParent(), planFile + " ", "the plan's folder");
  }

  /** Files on the command line. */
  static NamedBy commandLine() {
    return new NamedBy(Path.of("").toAbsolutePath(), "", "the working folder");
  }

  /** What a name is allowed to be. */
  String allowed() {
    return "a file, its path relative to " + words;
  }
}
