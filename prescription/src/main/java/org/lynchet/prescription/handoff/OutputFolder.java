package org.lynchet.prescription.handoff;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.AtomicMoveNotSupportedException;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.Comparator;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.concurrent.locks.LockSupport;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.lynchet.prescription.fault.Faults;

/**
 * Puts an output folder in place whole: it is filled under another name beside its place, then
 * moved there. Told to end, as by Ctrl-C, the program leaves the old folder or the new one, and
 * nothing beside it. Killed at any moment, it leaves the old folder or the new one, or nothing with
 * the old one whole beside it; and perhaps a draft, which no later run looks at.
 */
final class OutputFolder implements AutoCloseable {
  /** The file that every output folder has, and by which one is known. */
  static final String SUMMARY = "summary.json";

  private final Path target;
  private final Path draft;
  private final Thread cleaner = new Thread(this::abandon, "remove draft");
  private boolean abandoned;

  private OutputFolder(Path target, Path draft) {
    this.target = target;
    this.draft = draft;
    Runtime.getRuntime().addShutdownHook(cleaner);
  }

  /** Begins a folder; it must be closed. */
  static OutputFolder beginFor(Path target) throws IOException {
    Path place = target.toAbsolutePath().normalize();
    Path parent = place.getParent();
    if (parent == null) {
      throw new IOException(place + " cannot be an output folder");
    }
    Files.createDirectories(parent);
    return new OutputFolder(place, makeBeside(place, "-draft-"));
  }

  /** Makes a hidden folder of a new name beside a place, with the rights that new folders have. */
  private static Path makeBeside(Path place, String mark) throws IOException {
    int number = 1;
    while (true) {
      try {
        return Files.createDirectory(
            place.resolveSibling("." + place.getFileName() + mark + number));
      } catch (FileAlreadyExistsException taken) {
        number++;
      }
    }
  }

  /**
   * Adds a fault if the place is taken by something that must not be replaced.
   *
   * @param force whether an earlier output folder may be replaced
   */
  static void checkPlace(Path target, boolean force, Faults faults) {
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

  /** Where to write. */
  Path draft() {
    return draft;
  }

  /**
   * Makes a folder below a draft, and those between. A draft that is gone is not made anew: it was
   * removed because the program is ending.
   *
   * @param folder the draft itself or a folder below it
   * @throws IOException if the file system refuses or the draft is gone
   */
  static void makeBelow(Path draft, Path folder) throws IOException {
    if (folder.equals(draft) || Files.isDirectory(folder)) {
      return;
    }
    Path parent = folder.getParent();
    if (parent == null || !folder.startsWith(draft)) {
      throw new IOException(folder + " is not below " + draft);
    }
    makeBelow(draft, parent);
    Files.createDirectory(folder);
  }

  /**
   * Puts the draft in place; what was there is gone after that.
   *
   * @throws IOException if the file system refuses, or the program is ending; the place is as it
   *     was
   */
  synchronized void moveIntoPlace() throws IOException {
    if (abandoned) {
      throw new IOException("the program is ending");
    }
    Path old = null;
    if (Files.exists(target)) {
      old = makeBeside(target, "-old-");
      Files.move(target, old, StandardCopyOption.REPLACE_EXISTING);
    }
    try {
      move(draft, target);
    } catch (IOException e) {
      if (old != null) {
        Files.move(old, target);
      }
      throw e;
    }
    if (old != null) {
      remove(old);
    }
  }

  /**
   * Puts one file of the draft in place, as a file; what was there is gone after that.
   *
   * @throws IOException if the file system refuses, or the program is ending; the place is as it
   *     was
   */
  synchronized void moveFileIntoPlace(String name) throws IOException {
    if (abandoned) {
      throw new IOException("the program is ending");
    }
    Files.move(draft.resolve(name), target, StandardCopyOption.REPLACE_EXISTING);
  }

  private static void move(Path from, Path to) throws IOException {
    try {
      Files.move(from, to, StandardCopyOption.ATOMIC_MOVE);
    } catch (AtomicMoveNotSupportedException e) {
      Files.move(from, to);
    }
  }

  /** Removes the draft, if it is not in place; never returns while the program is ending. */
  @Override
  public void close() {
    removeDraft();
    try {
      Runtime.getRuntime().removeShutdownHook(cleaner);
    } catch (IllegalStateException ending) {
      // Whatever failed since then failed because the draft is gone: that is no fault to tell.
      while (true) {
        LockSupport.park();
      }
    }
  }

  /**
   * Removes the draft while another thread may still be writing into it, and keeps that thread from
   * putting in place what is left of it.
   */
  private synchronized void abandon() {
    abandoned = true;
    Path gone = draft.resolveSibling(draft.getFileName() + "-gone");
    try {
      move(draft, gone); // from here on nothing new can be written into it
      remove(gone);
    } catch (IOException | UncheckedIOException inPlaceOrInUse) {
      removeDraft();
    }
  }

  private synchronized void removeDraft() {
    try {
      remove(draft);
    } catch (IOException | UncheckedIOException left) {
      // A draft that cannot be removed is in nobody's way: its name begins with a dot.
      return;
    }
  }

  private static void remove(Path folder) throws IOException {
    if (!Files.exists(folder)) {
      return;
    }
    List<Path> deepestFirst;
    try (Stream<Path> all = Files.walk(folder)) {
      deepestFirst = all.sorted(Comparator.reverseOrder()).toList();
    }
    for (Path path : deepestFirst) {
      Files.deleteIfExists(path);
    }
  }
}
