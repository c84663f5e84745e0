package org.lynchet.prescription.handoff;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.lynchet.prescription.fault.Faults;

/** Tells whether an output folder may be written to a place. */
final class OutputFolder {
  /** The file that every output folder has, and by which one is known. */
  static final String SUMMARY = "summary.json";

  private OutputFolder() {}

  /**
   * Adds a fault if the place is taken by something that must not be replaced.
   *
   * @param force whether an earlier output folder may be replaced
   */
  static void checkPlace(Path target, boolean force, Faults faults) {
    checkOutside(target, faults);
    Path parent = target.toAbsolutePath().normalize().getParent();
    try {
      if (Files.isDirectory(target) && !isEmpty(target)) {
        checkReplaceable(target, force, faults);
      } else if (Files.exists(target) && !Files.isDirectory(target)) {
        faults.add(
            "the output folder is a file",
            target.toString(),
            "a folder, or a name that is not taken",
            "choose another folder with --out");
      } else if (parent != null && Files.exists(parent) && !Files.isWritable(parent)) {
        faults.add(
            "cannot write there",
            parent.toString(),
            "a folder that you may write to",
            "choose another folder with --out");
      }
    } catch (IOException e) {
      faults.add(
          "cannot look into the output folder: " + e.getMessage(),
          target.toString(),
          "a folder that you may read and write",
          "choose another folder with --out");
    }
  }

  /** Adds a fault if a place is inside another output, which would not be as it was written. */
  static void checkOutside(Path target, Faults faults) {
    Path above = target.toAbsolutePath().normalize().getParent();
    while (above != null) {
      if (!WrittenSummary.paths(above.resolve(SUMMARY)).isEmpty()) {
        faults.add(
            "it would lie in the output of an earlier run, " + above,
            target.toString(),
            "a place outside of other outputs",
            "choose another place with --out");
        return;
      }
      above = above.getParent();
    }
  }

  private static void checkReplaceable(Path target, boolean force, Faults faults)
      throws IOException {
    Set<String> strange = strangeFiles(target);
    if (!strange.isEmpty()) {
      faults.add(
          "the output folder holds files that were not written by this program: "
              + strange.stream().limit(5).collect(Collectors.joining(", "))
              + (strange.size() > 5 ? " and " + (strange.size() - 5) + " more" : ""),
          target.toString(),
          "an empty folder, or an earlier output with nothing else in it",
          "move those files away, or choose another folder with --out");
    } else if (!force) {
      faults.add(
          "the output folder is there already",
          target.toString(),
          "a new folder, or --force",
          "add --force to replace it, or choose another folder with --out");
    }
  }

  private static Set<String> strangeFiles(Path target) throws IOException {
    Set<String> files = new TreeSet<>(Digests.filesBelow(target));
    if (files.remove(SUMMARY)) {
      files.removeAll(WrittenSummary.paths(target.resolve(SUMMARY)));
    }
    return files;
  }

  private static boolean isEmpty(Path folder) throws IOException {
    try (Stream<Path> entries = Files.list(folder)) {
      return entries.findAny().isEmpty();
    }
  }
}
