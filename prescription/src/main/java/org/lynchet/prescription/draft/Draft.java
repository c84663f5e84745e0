package org.lynchet.prescription.draft;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.locks.LockSupport;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.lynchet.prescription.fault.Faults;

/**
 * Holds files until all are whole, then moves them to their places, all or none. Told to end, as by
 * Ctrl-C, the program leaves the old files or the new ones, and nothing beside them. Killed at any
 * moment, it leaves the old or the new ones, or the old ones in a hidden folder beside, from where
 * {@link CutOffRun} puts them back; and perhaps a draft, which no later run looks at.
 */
public final class Draft implements AutoCloseable {
  private final Path place;
  private final Path draft;
  private final ParentFolders parents;
  private final Thread cleaner = new Thread(this::abandon, "remove draft");
  private boolean abandoned;

  private Draft(Path place, Path draft, ParentFolders parents) {
    this.place = place;
    this.draft = draft;
    this.parents = parents;
    Runtime.getRuntime().addShutdownHook(cleaner);
  }

  /**
   * Begins a draft beside a place, whose folder is made if it is missing; it must be closed. Where
   * the place is a link to a folder, that folder is meant, and the link stays.
   *
   * @param place of the folder that the draft will be, or of any of its files
   * @throws IOException if the file system refuses; nothing was made
   */
  public static Draft beside(Path place) throws IOException {
    Path whole = HiddenFolder.whole(place);
    Path parent = whole.getParent();
    if (parent == null) {
      throw new IOException(whole + " is no place for files");
    }
    ParentFolders parents = new ParentFolders(parent);
    parents.make(parent);
    return new Draft(whole, HiddenFolder.make(whole, "-draft-"), parents);
  }

  /**
   * Adds a fault if a file's place is taken.
   *
   * @param force whether a file that is there may be replaced; a folder never is
   */
  public static void checkPlace(Path file, boolean force, Faults faults) {
    if (Files.isDirectory(file)) {
      faults.add(
          "a folder is where a file has to be",
          file.toString(),
          "a place for a file",
          "move that folder away, or choose another place");
    } else if (Files.exists(file) && !force) {
      faults.add(
          "a file is there already",
          file.toString(),
          "a new file, or --force",
          "add --force to replace it, or choose another place");
    }
  }

  /** Where to write. */
  public Path folder() {
    return draft;
  }

  /**
   * Makes a folder below a draft, and those between. A draft that is gone is not made anew: it was
   * removed because the program is ending.
   *
   * @param folder the draft itself or a folder below it
   * @throws IOException if the file system refuses or the draft is gone
   */
  public static void makeBelow(Path draft, Path folder) throws IOException {
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
   * Makes the draft the folder at its place; the folder that was there is gone after that.
   *
   * @throws IOException if the file system refuses, or the program is ending; the place is as it
   *     was
   */
  public synchronized void moveFolderIntoPlace() throws IOException {
    checkNotAbandoned();
    Moves moves = new Moves();
    SetAside old = null;
    if (isThere(place)) {
      old = SetAside.beside(place);
      moves.add(place, old.of(place));
    }
    moves.add(draft, place);
    moveAll(moves, old);
  }

  /**
   * Moves the draft's files beside the place; files of their names that were there are gone after
   * that. A single file replaces another in one step.
   *
   * @throws IOException if the file system refuses, or the program is ending; all is as it was
   */
  public synchronized void moveFilesIntoPlace() throws IOException {
    checkNotAbandoned();
    List<Path> files = files();
    for (Path file : files) {
      if (Files.isDirectory(place.resolveSibling(file.getFileName()))) {
        throw new IOException(
            "a folder is where a file has to be: " + place.resolveSibling(file.getFileName()));
      }
    }
    Moves moves = new Moves();
    SetAside old = null;
    for (Path file : files) {
      Path to = place.resolveSibling(file.getFileName());
      if (files.size() > 1 && isThere(to)) {
        old = old == null ? SetAside.beside(place) : old;
        moves.add(to, old.of(to));
      }
    }
    files.forEach(file -> moves.add(file, place.resolveSibling(file.getFileName())));
    moveAll(moves, old);
  }

  /** The files of the draft, in order of their names. */
  public List<Path> files() throws IOException {
    try (Stream<Path> files = Files.list(draft)) {
      return files.sorted().toList();
    }
  }

  private void checkNotAbandoned() throws IOException {
    if (abandoned) {
      throw new IOException("the program is ending");
    }
  }

  /** A link that leads nowhere is there too. */
  private static boolean isThere(Path place) {
    return Files.exists(place, LinkOption.NOFOLLOW_LINKS);
  }

  private static void moveAll(Moves moves, @Nullable SetAside old) throws IOException {
    try {
      moves.run();
    } catch (IOException e) {
      if (old != null && e.getSuppressed().length == 0) {
        old.remove(); // what was in it was moved back
      }
      throw e;
    }
    if (old != null) {
      old.remove();
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
      Moves.move(draft, gone); // from here on nothing new can be written into it
      HiddenFolder.removeQuietly(gone);
    } catch (IOException inPlaceOrInUse) {
      HiddenFolder.removeQuietly(draft);
    }
    parents.removeEmpty();
  }

  private synchronized void removeDraft() {
    HiddenFolder.removeQuietly(draft);
    parents.removeEmpty();
  }
}
