package org.lynchet.prescription.workflow;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.List;
import org.lynchet.prescription.fault.Faults;
import org.lynchet.prescription.fault.RejectedException;

/** Writes a few files into a folder; each takes its place only when all are whole. */
final class FolderFiles {
  private final Path folder;
  private final List<String> names;
  private final String choice;

  /**
   * Files of a folder.
   *
   * @param folder where to; it is made if it is not there
   */
  FolderFiles(Path folder, List<String> names) {
    this(folder, names, "another folder with --out");
  }

  /**
   * Files of a folder that another option names.
   *
   * @param choice what to choose instead, with the option
   */
  FolderFiles(Path folder, List<String> names, String choice) {
    this.folder = folder;
    this.names = List.copyOf(names);
    this.choice = choice;
  }

  /** Draws the files into another folder. */
  interface Drawing {
    void into(Path draft) throws IOException;
  }

  /** Adds a fault for each file that is there already. */
  void checkFree(Faults faults) {
    for (String name : names) {
      if (Files.exists(folder.resolve(name))) {
        faults.add(
            "a file is there already",
            folder.resolve(name).toString(),
            "files that are not there yet, unless --force is given",
            "choose " + choice + ", or replace it with --force");
      }
    }
  }

  /**
   * Writes the files.
   *
   * @return their names
   * @throws RejectedException if the file system refuses
   */
  List<String> write(Drawing drawing) throws RejectedException {
    try {
      Files.createDirectories(folder);
      Path draft = Files.createTempDirectory(folder, ".draft-");
      try {
        drawing.into(draft);
        for (String name : names) {
          Files.move(
              draft.resolve(name), folder.resolve(name), StandardCopyOption.REPLACE_EXISTING);
        }
      } finally {
        for (String name : names) {
          Files.deleteIfExists(draft.resolve(name));
        }
        Files.deleteIfExists(draft);
      }
      return names;
    } catch (IOException e) {
      Faults faults = new Faults();
      faults.add(
          "cannot write: " + e,
          folder.toString(),
          "a folder that you may write to, on a disk with room",
          "make room there, or choose " + choice);
      throw new RejectedException(faults.list());
    }
  }
}
