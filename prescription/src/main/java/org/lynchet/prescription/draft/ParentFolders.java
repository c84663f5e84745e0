package org.lynchet.prescription.draft;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** Makes the folders above a place, and takes away again those that nothing came into. */
final class ParentFolders {
  private final List<Path> missing = new ArrayList<>();

  /** Looks which folders are missing. */
  ParentFolders(Path deepest) {
    @Nullable Path folder = deepest;
    while (folder != null && !Files.exists(folder)) {
      missing.add(folder);
      folder = folder.getParent();
    }
  }

  /** Makes them, and those that are not missing are made sure to be folders. */
  void make(Path deepest) throws IOException {
    try {
      Files.createDirectories(deepest);
    } catch (IOException e) {
      removeEmpty();
      throw e;
    }
  }

  /** Removes those that it made and that are empty. */
  void removeEmpty() {
    try {
      for (Path folder : missing) {
        Files.deleteIfExists(folder);
      }
    } catch (IOException inUse) {
      // Something is in it, so it and those above stay.
      return;
    }
  }
}
