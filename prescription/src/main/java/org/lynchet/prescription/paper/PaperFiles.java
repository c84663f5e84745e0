package org.lynchet.prescription.paper;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.lynchet.prescription.driving.PlanterDriving;
import org.lynchet.prescription.picture.FieldOnSheet;
import org.lynchet.prescription.picture.PdfFile;
import org.lynchet.prescription.picture.Sheet;
import org.lynchet.prescription.summary.Summary;
import org.lynchet.prescription.zone.FieldLayout;

/** Writes the cab sheet and the seed sheet of a plan as PDF. */
public final class PaperFiles {
  /** The cab sheet's file: a page for each planter. */
  public static final String CAB_SHEET = "cab-sheet.pdf";

  /** The seed sheet's file. */
  public static final String SEED_SHEET = "seed-sheet.pdf";

  private PaperFiles() {}

  /**
   * Writes both into a folder and opens them again; without a pass to drive there is no cab sheet.
   *
   * @return what does not read back as meant; empty if all does
   * @throws IOException if a file cannot be written
   */
  public static List<String> write(FieldLayout layout, Summary summary, Path folder)
      throws IOException {
    List<String> differences = new ArrayList<>();
    String field = layout.plan().field().name();
    List<Sheet> cabs = cabSheets(layout, summary);
    if (!cabs.isEmpty()) {
      differences.addAll(
          PdfFile.writeAndCheck(field + ": cab sheet", cabs, folder.resolve(CAB_SHEET)));
    }
    List<Sheet> seed = new SeedSheet(layout, summary).make();
    differences.addAll(
        PdfFile.writeAndCheck(field + ": seed sheet", seed, folder.resolve(SEED_SHEET)));
    return differences;
  }

  private static List<Sheet> cabSheets(FieldLayout layout, Summary summary) {
    FieldOnSheet field = FieldOnSheet.of(layout);
    Map<String, List<PlanterDriving>> byPlanter = new LinkedHashMap<>();
    for (PlanterDriving one : summary.driving().planters()) {
      byPlanter.computeIfAbsent(one.planter().name(), name -> new ArrayList<>()).add(one);
    }
    return byPlanter.values().stream()
        .map(driven -> new CabSheet(layout, summary, field, driven).make())
        .toList();
  }
}
