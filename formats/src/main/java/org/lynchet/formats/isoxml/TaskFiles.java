package org.lynchet.formats.isoxml;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.lynchet.formats.Fault;
import org.lynchet.formats.FormatException;
import org.lynchet.formats.InputFile;
import org.lynchet.formats.PackedFiles;

/**
 * The files of one set of task data, by name whatever the case of letters: TASKDATA.XML and those
 * beside it, in a folder or in a .zip.
 */
final class TaskFiles implements AutoCloseable {
  static final String MAIN = "TASKDATA.XML";

  private final String place;
  private final String mainName;
  private final @Nullable PackedFiles zip;
  private final String zipFolder;
  private final Map<String, Path> beside;

  private TaskFiles(
      String place,
      String mainName,
      @Nullable PackedFiles zip,
      String zipFolder,
      Map<String, Path> beside) {
    this.place = place;
    this.mainName = mainName;
    this.zip = zip;
    this.zipFolder = zipFolder;
    this.beside = beside;
  }

  /** Opens a .zip, a folder, or TASKDATA.XML itself; it must be closed. */
  static TaskFiles open(Path file) throws FormatException {
    if (Files.isDirectory(file)) {
      Map<String, Path> inFolder = list(file);
      Path main = inFolder.get(lower(MAIN));
      if (main == null) {
        throw missing(file);
      }
      return new TaskFiles(main.toString(), lower(MAIN), null, "", inFolder);
    }
    if (lower(InputFile.name(file)).endsWith(".zip")) {
      return openZip(file);
    }
    Path folder = file.toAbsolutePath().getParent();
    Map<String, Path> files = new HashMap<>(folder == null ? Map.of() : list(folder));
    files.put(lower(InputFile.name(file)), file);
    return new TaskFiles(file.toString(), lower(InputFile.name(file)), null, "", files);
  }

  private static TaskFiles openZip(Path file) throws FormatException {
    PackedFiles zip = PackedFiles.open(file);
    List<String> found = zip.names().stream().filter(TaskFiles::isMain).toList();
    if (found.size() != 1) {
      zip.close();
      if (found.isEmpty()) {
        throw missing(file);
      }
      throw new FormatException(
          new Fault(
              "several TASKDATA.XML in it: " + found,
              file.toString(),
              "one set of task data in a .zip",
              "unpack it, and name one TASKDATA.XML"));
    }
    String main = found.get(0);
    String folder = main.substring(0, main.length() - MAIN.length());
    return new TaskFiles(file + "!/" + zip.written(main), lower(MAIN), zip, folder, Map.of());
  }

  /** Whether a name in a .zip, in lower case, is that of the main file. */
  static boolean isMain(String name) {
    return name.equals(lower(MAIN)) || name.endsWith("/" + lower(MAIN));
  }

  private static Map<String, Path> list(Path folder) throws FormatException {
    Map<String, Path> files = new HashMap<>();
    try (Stream<Path> all = Files.list(folder)) {
      all.filter(Files::isRegularFile)
          .sorted()
          .forEach(file -> files.putIfAbsent(lower(InputFile.name(file)), file));
      return files;
    } catch (IOException e) {
      throw new FormatException(
          new Fault(
              "its folder cannot be listed (" + e + ")",
              folder.toString(),
              "a folder that may be read",
              "check the name and the folder"));
    }
  }

  /** What the main file is called in faults. */
  String place() {
    return place;
  }

  /** The bytes of the main file. */
  byte[] main() throws FormatException {
    byte[] bytes = find(mainName);
    if (bytes == null) {
      throw missing(Path.of(place));
    }
    return bytes;
  }

  /** The bytes of a file of the set; null if it is not there. */
  byte @Nullable [] find(String name) throws FormatException {
    if (zip != null) {
      return zip.find(zipFolder + lower(name));
    }
    Path file = beside.get(lower(name));
    return file == null ? null : InputFile.read(file);
  }

  @Override
  public void close() {
    if (zip != null) {
      zip.close();
    }
  }

  private static FormatException missing(Path file) {
    return new FormatException(
        new Fault(
            "no TASKDATA.XML there",
            file.toString(),
            "a folder or .zip with TASKDATA.XML in it",
            "export the task data again, or name the right file"));
  }

  private static String lower(String name) {
    return name.toLowerCase(Locale.ROOT);
  }
}
