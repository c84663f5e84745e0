package org.lynchet.prescription.handoff;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.TreeSet;
import org.locationtech.jts.coverage.CoverageValidator;
import org.locationtech.jts.geom.Geometry;
import org.lynchet.formats.FeatureTable;
import org.lynchet.formats.FormatException;
import org.lynchet.formats.geojson.GeoJson;
import org.lynchet.prescription.fault.Faults;
import org.lynchet.prescription.fault.RejectedException;
import org.lynchet.prescription.plan.HandoffChoices.Format;
import org.lynchet.prescription.summary.WrittenFile;

/**
 * Checks an output folder that may have travelled: that every file is there, byte for byte, that
 * the zones still cover the field, and that the planting files say what the plan says. A folder for
 * an applicator has neither zones nor planting files: there only the files are compared.
 */
public final class FolderCheck {
  static final String PLAN = "plan.geojson";
  static final String PLANTING = "planting";

  /** How far the areas of the zones may be from the field's, as a share. */
  private static final double AREA_TOLERANCE = 1e-6;

  /** How far the field's area in summary.json, with its 4 decimals, is from what it was, in m2. */
  private static final double SUMMARY_ROUNDING = 0.00005;

  /** So many files that do not belong there are told one by one. */
  private static final int MOST_STRANGE = 5;

  private final Path folder;
  private final Faults faults = new Faults();

  private FolderCheck(Path folder) {
    this.folder = folder;
  }

  /**
   * Checks a folder.
   *
   * @return how many files were checked
   * @throws RejectedException with everything that is wrong
   */
  public static int check(Path folder) throws RejectedException {
    FolderCheck check = new FolderCheck(folder);
    int files = check.run();
    check.faults.throwIfAny();
    return files;
  }

  private int run() throws RejectedException {
    Path summaryFile = folder.resolve(OutputFolder.SUMMARY);
    WrittenSummary summary;
    try {
      summary = WrittenSummary.read(summaryFile);
    } catch (IOException e) {
      faults.add(
          "not the output of a plan: " + whyNot(summaryFile, e),
          folder.toString(),
          "a folder that 'plan' or 'handoff' has written, with its " + OutputFolder.SUMMARY,
          Files.isRegularFile(folder)
              ? "name the folder; unpack it first if it is packed"
              : "name that folder, or copy it again");
      throw new RejectedException(faults.list());
    }
    for (WrittenFile file : summary.files()) {
      checkFile(file);
    }
    checkStrange(summary);
    if (faults.isEmpty() && summary.receiver().isEmpty()) {
      checkTables(summary);
    }
    return summary.files().size();
  }

  private String whyNot(Path summaryFile, IOException e) {
    if (!Files.exists(folder)) {
      return "there is no such folder";
    }
    if (!Files.isDirectory(folder)) {
      return "it is a file";
    }
    return Files.exists(summaryFile)
        ? OutputFolder.SUMMARY + " cannot be taken: " + e.getMessage()
        : "there is no " + OutputFolder.SUMMARY + " in it";
  }

  private void checkFile(WrittenFile file) {
    try {
      if (!Files.isRegularFile(folder.resolve(file.path()))) {
        damaged(file.path(), "the file is missing");
      } else if (!Digests.of(folder, file.path()).equals(file)) {
        damaged(file.path(), "the file is not as it was written");
      }
    } catch (IOException e) {
      damaged(file.path(), "the file cannot be read: " + e.getMessage());
    }
  }

  private void checkStrange(WrittenSummary summary) {
    try {
      Set<String> strange = new TreeSet<>(Digests.filesBelow(folder));
      summary.files().forEach(file -> strange.remove(file.path()));
      strange.remove(OutputFolder.SUMMARY);
      strange.stream()
          .limit(MOST_STRANGE)
          .forEach(path -> damaged(path, "the file does not belong to the output"));
      if (strange.size() > MOST_STRANGE) {
        damaged("", (strange.size() - MOST_STRANGE) + " more files do not belong to the output");
      }
    } catch (IOException e) {
      damaged("", "the folder cannot be read: " + e.getMessage());
    }
  }

  private void damaged(String path, String what) {
    faults.add(
        what,
        folder.resolve(path).toString(),
        "the files exactly as 'plan' wrote them",
        "copy the folder again, or run 'plan' again; do not plant by it");
  }

  private void checkTables(WrittenSummary summary) {
    try {
      FeatureTable plan = GeoJson.reader().read(folder.resolve(PLAN));
      checkCoverage(plan, summary.areaSquareMetres());
      PlantingCheck planting = new PlantingCheck(plan);
      List<String> missing = planting.missingInPlan();
      missing.forEach(what -> damaged(PLAN, what));
      if (!missing.isEmpty()) {
        return;
      }
      for (WrittenFile file : summary.files()) {
        for (Format format : HandoffFile.ofOneTable(List.of(Format.values()))) {
          if (file.path().startsWith(PLANTING + "/")
              && file.path().endsWith(format.file().ending())) {
            planting
                .differences(format.file().reader("").read(folder.resolve(file.path())))
                .forEach(what -> damaged(file.path(), what));
          }
        }
      }
    } catch (FormatException e) {
      faults.addAll(e);
    }
    TaskDataFiles.check(folder, faults);
  }

  private void checkCoverage(FeatureTable plan, double fieldArea) {
    Geometry[] zones = plan.features().stream().map(f -> f.geometry()).toArray(Geometry[]::new);
    if (CoverageValidator.hasInvalidResult(CoverageValidator.validate(zones))) {
      damaged(PLAN, "zones overlap or do not match along their edges");
    }
    int column = plan.findColumn("area_m2").orElse(-1);
    double sum =
        column < 0
            ? 0
            : plan.features().stream()
                .mapToDouble(f -> f.values().get(column) instanceof Double area ? area : 0)
                .sum();
    if (Math.abs(sum - fieldArea) > AREA_TOLERANCE * fieldArea + SUMMARY_ROUNDING) {
      damaged(
          PLAN,
          String.format(Locale.ROOT, "the zones are %.4f m2, the field %.4f m2", sum, fieldArea));
    }
  }
}
