package org.lynchet.formats;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;

/** Reads a whole file into memory, or tells the user why it cannot be. */
public final class InputFile {
  /** The largest file taken, in bytes: far more than any field needs, and it still fits memory. */
  public static final long LIMIT_BYTES = 256L << 20;

  private InputFile() {}

  /**
   * The bytes of a file.
   *
   * @throws FormatException if it is missing, a folder, unreadable, or larger than {@link
   *     #LIMIT_BYTES}
   */
  public static byte[] read(Path file) throws FormatException {
    size(file);
    try {
      return Files.readAllBytes(file);
    } catch (IOException e) {
      throw refused(file, e);
    }
  }

  /**
   * The length of a file in bytes.
   *
   * @throws FormatException if it is missing, a folder, or larger than {@link #LIMIT_BYTES}
   */
  public static long size(Path file) throws FormatException {
    try {
      if (Files.isDirectory(file)) {
        throw fault("it is a folder", file, "a file");
      }
      long size = Files.size(file);
      if (size > LIMIT_BYTES) {
        throw fault(
            "it has " + size + " bytes", file, "at most " + LIMIT_BYTES + " bytes in one file");
      }
      return size;
    } catch (IOException e) {
      throw refused(file, e);
    }
  }

  private static FormatException refused(Path file, IOException e) {
    return e instanceof NoSuchFileException
        ? fault("there is no such file", file, "a file that exists")
        : fault("it cannot be read (" + e + ")", file, "a file that may be read");
  }

  /** The last part of a file's path, without its extension. */
  public static String baseName(Path file) {
    String name = name(file);
    int dot = name.lastIndexOf('.');
    return dot > 0 ? name.substring(0, dot) : name;
  }

  /** The last part of a file's path; empty for a root. */
  public static String name(Path file) {
    Path last = file.getFileName();
    return last == null ? "" : last.toString();
  }

  private static FormatException fault(String what, Path file, String allowed) {
    return new FormatException(
        new Fault(what, file.toString(), allowed, "check the name and the folder"));
  }
}
