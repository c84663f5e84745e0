package org.lynchet.prescription.draft;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.lynchet.formats.Fault;
import org.lynchet.prescription.fault.RejectedException;

/**
 * Mends what a run left that was killed, or whose power failed, while it moved files into place.
 */
public final class CutOffRun {
  private CutOffRun() {}

  /**
   * Puts back what such a run had set aside, if the new is not whole in its place, and removes what
   * such runs have left of the old where it is. Nothing is removed but what carries this program's
   * own note; files that came in place of those put back are kept.
   *
   * @param place of a folder, or of the first of several files, as the run was given it
   * @return what was put back, a sentence for each; empty if nothing was amiss
   * @throws RejectedException if the file system refuses
   */
  public static List<String> mend(Path place) throws RejectedException {
    List<String> told = new ArrayList<>();
    Path whole = place.toAbsolutePath().normalize();
    try {
      whole = behindLink(HiddenFolder.whole(place));
      for (SetAside left : SetAside.leftBeside(whole)) {
        if (left.isDone() || putBack(left, whole, told)) {
          left.remove();
        }
      }
    } catch (IOException refused) {
      throw new RejectedException(
          List.of(
              new Fault(
                  "an earlier run was cut off, and what it had set aside cannot be put back: "
                      + Refusal.reason(refused),
                  whole.toString(),
                  "a folder that you may write to",
                  "move what is in the folder 'files' of ."
                      + whole.getFileName()
                      + "-old-... beside it to its place by hand")));
    }
    return told;
  }

  /** A link that leads nowhere may have led to what was set aside. */
  private static Path behindLink(Path place) throws IOException {
    return Files.isSymbolicLink(place) && !Files.exists(place)
        ? place.resolveSibling(Files.readSymbolicLink(place)).normalize()
        : place;
  }

  /** Whether it can be removed after that. */
  private static boolean putBack(SetAside left, Path place, List<String> told) throws IOException {
    boolean filesOfTheNew = false;
    List<Path> back = new ArrayList<>();
    for (Path held : left.held()) {
      Path to = place.resolveSibling(held.getFileName());
      if (isFolder(held) && isFolder(to) && !isEmpty(to)) {
        continue; // the new folder came into place by one move, so it is whole
      }
      if (isFolder(to)) {
        Files.delete(to); // it is empty
      } else if (Files.exists(to, LinkOption.NOFOLLOW_LINKS)) {
        left.putAway(to);
        filesOfTheNew = true;
      }
      Moves.move(held, to);
      back.add(to);
    }
    if (!back.isEmpty()) {
      told.add(
          "An earlier run was cut off while it replaced what is put back now: "
              + back.stream().map(Path::toString).collect(Collectors.joining(", ")));
    }
    if (filesOfTheNew) {
      told.add("What it had written in their places is in " + left + ".");
    }
    return !left.hasPutAway();
  }

  private static boolean isFolder(Path place) {
    return Files.isDirectory(place, LinkOption.NOFOLLOW_LINKS);
  }

  private static boolean isEmpty(Path folder) throws IOException {
    try (Stream<Path> entries = Files.list(folder)) {
      return entries.findAny().isEmpty();
    }
  }
}
