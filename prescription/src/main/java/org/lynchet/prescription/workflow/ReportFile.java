package org.lynchet.prescription.workflow;

import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.lynchet.prescription.compare.Comparison;
import org.lynchet.prescription.fault.Faults;
import org.lynchet.prescription.fault.RejectedException;
import org.lynchet.prescription.report.ReportPage;
import org.lynchet.prescription.zone.FieldData;

/** Writes a comparison's page into a file. */
public final class ReportFile {
  private final String name;
  private final FolderFiles files;

  private ReportFile(String name, FolderFiles files) {
    this.name = name;
    this.files = files;
  }

  /**
   * Checks what will be written.
   *
   * @param file the page; its folder is made if it is not there
   * @param force whether a file that is there is replaced
   * @throws RejectedException if a file is there, or a folder
   */
  public static ReportFile prepared(Path file, boolean force) throws RejectedException {
    Faults faults = new Faults();
    Path whole = file.toAbsolutePath().normalize();
    Path folder = whole.getParent();
    if (folder == null || Files.isDirectory(whole)) {
      faults.add(
          "a folder is there",
          file.toString(),
          "a file such as decision.html",
          "name a file in it with --report");
      throw new RejectedException(faults.list());
    }
    String name = whole.getFileName().toString();
    FolderFiles files = new FolderFiles(folder, List.of(name));
    files.checkPlaces(force, faults);
    faults.throwIfAny();
    return new ReportFile(name, files);
  }

  /**
   * Writes the page; the file takes its place only when it is whole.
   *
   * @throws RejectedException if the file system refuses
   */
  public void write(Comparison comparison, FieldData field) throws RejectedException {
    String page = ReportPage.of(comparison, field);
    files.write(draft -> Files.writeString(draft.resolve(name), page, StandardCharsets.UTF_8));
  }
}
