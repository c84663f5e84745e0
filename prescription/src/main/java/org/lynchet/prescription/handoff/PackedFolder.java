package org.lynchet.prescription.handoff;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.zip.ZipEntry;
import java.util.zip.ZipOutputStream;
import org.lynchet.formats.FormatException;
import org.lynchet.formats.PackedFiles;

/** Packs the files of a folder into a .zip, the same bytes each time. */
final class PackedFolder {
  private static final LocalDateTime NO_DATE = LocalDateTime.of(2000, 1, 1, 0, 0);

  private PackedFolder() {}

  /** Packs all files below a folder, by their paths. */
  static void write(Path folder, Path zip) throws IOException {
    try (OutputStream out = Files.newOutputStream(zip);
        ZipOutputStream packed = new ZipOutputStream(out)) {
      for (String path : Digests.filesBelow(folder)) {
        ZipEntry entry = new ZipEntry(path);
        entry.setTimeLocal(NO_DATE);
        packed.putNextEntry(entry);
        Files.copy(folder.resolve(path), packed);
        packed.closeEntry();
      }
    }
  }

  /** Reads a .zip again; the differences from the files of the folder. */
  static List<String> differences(Path folder, Path zip) throws IOException {
    List<String> found = new ArrayList<>();
    try (PackedFiles packed = PackedFiles.open(zip)) {
      List<String> files = Digests.filesBelow(folder);
      for (String path : files) {
        byte[] read = packed.find(path.toLowerCase(Locale.ROOT));
        if (read == null || !Arrays.equals(read, Files.readAllBytes(folder.resolve(path)))) {
          found.add(path + ": the .zip does not hold it as it was written");
        }
      }
      if (packed.names().size() != files.size()) {
        found.add("the .zip holds " + packed.names().size() + " files, not " + files.size());
      }
    } catch (FormatException e) {
      e.faults().forEach(fault -> found.add("the .zip: " + fault.what()));
    }
    return found;
  }
}
