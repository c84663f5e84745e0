package org.lynchet.prescription.workflow;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import org.lynchet.prescription.draft.Draft;
import org.lynchet.prescription.draft.Refusal;
import org.lynchet.prescription.fault.Faults;
import org.lynchet.prescription.fault.RejectedException;

/** Writes a few files into a folder, all or none. */
final class FolderFiles {
  private final Path folder;
  private final List<String> names;

  /**
   * Files of a folder.
   *
   * @param folder where to; it is made if it is not there
   * @param names at least one
   */
  FolderFiles(Path folder, List<String> names) {
    this.folder = folder;
    this.names = List.copyOf(names);
  }

  /** Draws the files into another folder. */
  interface Drawing {
    void into(Path draft) throws IOException;
  }

  /**
   * Adds a fault for each file whose place is taken.
   *
   * @param force whether files that are there may be replaced
   */
  void checkPlaces(boolean force, Faults faults) {
    for (String name : names) {
      Draft.checkPlace(folder.resolve(name), force, faults);
    }
  }

  /**
   * Writes the files.
   *
   * @return their names
   * @throws RejectedException if the file system refuses; all is as it was
   */
  List<String> write(Drawing drawing) throws RejectedException {
    try (Draft draft = Draft.beside(folder.resolve(names.get(0)))) {
      drawing.into(draft.folder());
      draft.moveFilesIntoPlace();
      return names;
    } catch (IOException e) {
      throw new RejectedException(List.of(Refusal.of(folder, e)));
    }
  }
}
