package org.lynchet.prescription.workflow;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import org.lynchet.prescription.compare.Comparison;
import org.lynchet.prescription.fault.Faults;
import org.lynchet.prescription.fault.RejectedException;
import org.lynchet.prescription.report.ReportPage;
import org.lynchet.prescription.zone.FieldData;

/** Writes a comparison's page into a file. */
public final class ReportFile {
  private final Path file;

  private ReportFile(Path file) {
    this.file = file;
  }

  /**
   * Checks what will be written.
   *
   * @param force whether a file that is there is replaced
   * @throws RejectedException if a file is there, or a folder
   */
  public static ReportFile prepared(Path file, boolean force) throws RejectedException {
    Faults faults = new Faults();
    if (Files.isDirectory(file)) {
      faults.add(
          "a folder is there",
          file.toString(),
          "a file such as decision.html",
          "name a file in it with --report");
    } else if (!force && Files.exists(file)) {
      faults.add(
          "a file is there already",
          file.toString(),
          "a file that is not there yet, unless --force is given",
          "choose another file with --report, or replace it with --force");
    }
    faults.throwIfAny();
    return new ReportFile(file);
  }

  /**
   * Writes the page; the file takes its place only when it is whole.
   *
   * @throws RejectedException if the file system refuses
   */
  public void write(Comparison comparison, FieldData field) throws RejectedException {
    String page = ReportPage.of(comparison, field);
    try {
      Path folder = file.toAbsolutePath().getParent();
      Files.createDirectories(folder);
      Path draft = Files.createTempDirectory(folder, ".report-");
      Path whole = draft.resolve("page.html");
      try {
        Files.writeString(whole, page, StandardCharsets.UTF_8);
        Files.move(whole, file, StandardCopyOption.REPLACE_EXISTING);
      } finally {
        Files.deleteIfExists(whole);
        Files.deleteIfExists(draft);
      }
    } catch (IOException e) {
      Faults faults = new Faults();
      faults.add(
          "cannot write: " + e,
          file.toString(),
          "a file in a folder that you may write to, on a disk with room",
          "make room there, or choose another file with --report");
      throw new RejectedException(faults.list());
    }
  }
}
