package org.lynchet.prescription.draft;

import java.io.IOException;
import java.nio.file.AccessDeniedException;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.FileSystemException;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import org.lynchet.formats.Fault;

/** Tells in words why the file system did not let files be written. */
public final class Refusal {
  private Refusal() {}

  /** The fault of a folder or file that could not be written; its place is as it was. */
  public static Fault of(Path target, IOException refused) {
    return new Fault(
        "cannot write: " + reason(refused),
        target.toString(),
        "a folder that you may write to, on a disk with room",
        refused.getSuppressed().length == 0
            ? next(refused) + "; nothing was changed"
            : "what was there is in a hidden folder beside, whose name ends in -old- and a number:"
                + " 'lynchet check' on the folder puts it back, and so does the next run");
  }

  private static String next(IOException refused) {
    return refused instanceof FileAlreadyExistsException
            || refused instanceof NoSuchFileException
            || refused instanceof AccessDeniedException
        ? "choose another place"
        : "make room there, or choose another place";
  }

  /** The system's own words where it has any, such as "No space left on device". */
  static String reason(IOException refused) {
    if (refused instanceof FileAlreadyExistsException taken) {
      return "a file is where a folder has to be: " + taken.getFile();
    }
    if (refused instanceof NoSuchFileException missing) {
      return "no folder can be made there: " + missing.getFile();
    }
    if (refused instanceof AccessDeniedException denied) {
      return "you may not write there: " + denied.getFile();
    }
    if (refused instanceof FileSystemException other && other.getReason() != null) {
      return other.getReason() + ": " + other.getFile();
    }
    return String.valueOf(refused.getMessage());
  }
}
