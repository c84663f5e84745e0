package org.lynchet.prescription.draft;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Objects;
import java.util.TreeSet;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/**
 * Holds what new files replace until all of them are in place: a hidden folder beside, with a note
 * that says what it is. While the folder's name has {@code -old-} in it, the moves are not known to
 * be done, and what is in it is whole; it gets {@code -gone-} in its name before any of it is
 * removed.
 */
final class SetAside {
  private static final String OLD = "-old-";
  private static final String GONE = "-gone-";
  private static final String NOTE = "what-this-is.txt";
  private static final String FILES = "files";
  private static final String PUT_AWAY = "new";
  private static final String WORDS =
      """
      Lynchet put in 'files' what it was replacing, and was cut off before it was done.
      Run it again with the same target, or run 'lynchet check' on it: what is missing there is put
      back first. To do that by hand, move what is in 'files' beside this folder.
      """;

  private final Path place;
  private final Path folder;

  private SetAside(Path place, Path folder) {
    this.place = place;
    this.folder = folder;
  }

  /** Makes one beside a place, with nothing in it yet. */
  static SetAside beside(Path place) throws IOException {
    SetAside made = new SetAside(place, HiddenFolder.make(place, OLD));
    Files.createDirectory(made.files());
    Files.writeString(made.folder.resolve(NOTE), WORDS, StandardCharsets.UTF_8);
    return made;
  }

  /** Those that runs which were cut off have left beside a place, and that are surely ours. */
  static List<SetAside> leftBeside(Path place) throws IOException {
    List<SetAside> left = new ArrayList<>();
    Path parent = place.getParent();
    if (parent == null || !Files.isDirectory(parent)) {
      return left;
    }
    Pattern name =
        Pattern.compile(
            Pattern.quote("." + place.getFileName()) + "(" + OLD + "|" + GONE + ")\\d+");
    try (Stream<Path> all = Files.list(parent)) {
      for (Path one : new TreeSet<>(all.toList())) {
        if (name.matcher(Objects.toString(one.getFileName())).matches() && isOurs(one)) {
          left.add(new SetAside(place, one));
        }
      }
    }
    return left;
  }

  /**
   * Whether it has the note; or no file but the beginning of it, as if the run was cut off while it
   * wrote that.
   */
  private static boolean isOurs(Path folder) throws IOException {
    if (!Files.isDirectory(folder, LinkOption.NOFOLLOW_LINKS)) {
      return false;
    }
    byte[] words = WORDS.getBytes(StandardCharsets.UTF_8);
    Path note = folder.resolve(NOTE);
    byte[] found = new byte[0];
    if (Files.isRegularFile(note, LinkOption.NOFOLLOW_LINKS) && Files.size(note) <= words.length) {
      found = Files.readAllBytes(note);
    }
    if (Arrays.equals(found, words)) {
      return true;
    }
    boolean begun = Arrays.equals(found, Arrays.copyOf(words, found.length));
    try (Stream<Path> all = Files.walk(folder)) {
      return begun
          && all.allMatch(
              path -> Files.isDirectory(path, LinkOption.NOFOLLOW_LINKS) || path.equals(note));
    }
  }

  private Path files() {
    return folder.resolve(FILES);
  }

  /** Where something of that name is put. */
  Path of(Path replaced) {
    return files().resolve(Objects.requireNonNull(replaced.getFileName()));
  }

  /** Whether all moves were done, as far as its name tells. */
  boolean isDone() {
    return Objects.toString(folder.getFileName()).startsWith("." + place.getFileName() + GONE);
  }

  /** What is in it, in order of names. */
  List<Path> held() throws IOException {
    if (!Files.isDirectory(files())) {
      return List.of();
    }
    try (Stream<Path> all = Files.list(files())) {
      return all.sorted().toList();
    }
  }

  /** Takes something from its place that is in the way of what is put back, and keeps it. */
  void putAway(Path inTheWay) throws IOException {
    Path kept = folder.resolve(PUT_AWAY);
    Files.createDirectories(kept);
    Moves.move(inTheWay, kept.resolve(Objects.requireNonNull(inTheWay.getFileName())));
  }

  /** Whether it keeps anything that was taken from its place. */
  boolean hasPutAway() {
    return Files.exists(folder.resolve(PUT_AWAY), LinkOption.NOFOLLOW_LINKS);
  }

  /** Removes it with all that is in it; what cannot be removed is in nobody's way. */
  void remove() {
    Path gone = folder;
    if (!isDone()) {
      String name = Objects.toString(folder.getFileName());
      String number = name.substring(name.lastIndexOf('-') + 1);
      try {
        gone = HiddenFolder.rename(folder, place, GONE, Integer.parseInt(number));
      } catch (IOException inUse) {
        return; // it must not lose a part of what it holds under this name
      }
    }
    HiddenFolder.removeQuietly(gone.resolve(FILES));
    HiddenFolder.removeQuietly(gone);
  }

  @Override
  public String toString() {
    return folder.toString();
  }
}
