package org.lynchet.prescription.draft;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.util.Comparator;
import java.util.stream.Stream;

/** Makes folders beside a place whose names begin with a dot, and takes them away. */
final class HiddenFolder {
  private HiddenFolder() {}

  /** A place as it is found by others: where it is a link to a folder, that folder itself. */
  static Path whole(Path place) throws IOException {
    Path whole = place.toAbsolutePath().normalize();
    return Files.isSymbolicLink(whole) && Files.isDirectory(whole) ? whole.toRealPath() : whole;
  }

  /** Makes one of a new name, with the rights that new folders have. */
  static Path make(Path place, String mark) throws IOException {
    int number = 1;
    while (true) {
      try {
        return Files.createDirectory(named(place, mark, number));
      } catch (FileAlreadyExistsException taken) {
        number++;
      }
    }
  }

  /** Gives one another mark, with the first free number from the one given. */
  static Path rename(Path folder, Path place, String mark, int number) throws IOException {
    int free = number;
    while (Files.exists(named(place, mark, free), LinkOption.NOFOLLOW_LINKS)) {
      free++;
    }
    Path renamed = named(place, mark, free);
    Moves.move(folder, renamed);
    return renamed;
  }

  private static Path named(Path place, String mark, int number) {
    return place.resolveSibling("." + place.getFileName() + mark + number);
  }

  /** A folder that cannot be removed is in nobody's way: its name begins with a dot. */
  static void removeQuietly(Path folder) {
    try (Stream<Path> all = Files.walk(folder)) {
      for (Path path : all.sorted(Comparator.reverseOrder()).toList()) {
        Files.deleteIfExists(path);
      }
    } catch (IOException | UncheckedIOException left) {
      return;
    }
  }
}
