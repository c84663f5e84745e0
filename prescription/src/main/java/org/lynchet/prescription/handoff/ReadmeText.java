package org.lynchet.prescription.handoff;

import java.util.List;
import org.lynchet.prescription.driving.DrivingText;
import org.lynchet.prescription.plan.HandoffChoices.Format;
import org.lynchet.prescription.summary.Summary;
import org.lynchet.prescription.summary.SummaryTable;
import org.lynchet.prescription.zone.FieldLayout;

/** Writes README.txt: what each file is, totals, cautions. */
final class ReadmeText {
  private ReadmeText() {}

  static String of(FieldLayout layout, Summary summary, List<WholePlan> plans) {
    StringBuilder text = new StringBuilder();
    text.append(SummaryTable.of(summary)).append('\n');
    String driving = DrivingText.of(summary.driving(), summary.areaUnit());
    text.append(driving).append(driving.isEmpty() ? "" : "\n");
    text.append("FILES\n");
    text.append("  plan.geojson             every zone of the field\n");
    for (String crop : PlantingTable.crops(layout)) {
      for (Format format : HandoffFile.ofOneTable(layout.plan().handoff().formats())) {
        String path = FolderCheck.PLANTING + "/" + crop + format.file().ending();
        text.append(
            "  %-24s prescription for planting %s%s%n"
                .formatted(path, crop, together(format.file().endings()))
                .replace(System.lineSeparator(), "\n"));
      }
    }
    plans.forEach(plan -> text.append(plan.readme()));
    text.append(SprayText.files(layout));
    if (!layout.passes().isEmpty()) {
      text.append("  guidance/passes.geojson  the line that each pass drives, pass by pass\n");
    }
    if (!layout.headlandPasses().isEmpty()) {
      text.append(
          """
            guidance/headland.geojson  the lines of the headland's passes; pass 1 is the innermost,
                                       distance_m is how far its centre is from the boundary
          """);
    }
    if (layout.plan().handoff().papers()) {
      text.append(
          """
            cab-sheet.pdf            for the cab: a page for each planter, to print
            seed-sheet.pdf           what seed goes where, to print
          """);
    }
    text.append(
        """
          map.svg                  a picture of the field, to print and to check against
          summary.json             the totals above for programs, and digests of all files

        All coordinates are WGS 84 longitude and latitude. A rate is seeds as set on the planter, not
        plants that stand later.

        BEFORE YOU PLANT
          1. Run `lynchet check` on this folder after it has travelled.
          2. In the cab, compare the area and the rates that the terminal shows with the totals above.
          3. Check the guidance line, the working width and the receiver's offset, plant one pass, and
             measure the width between its outside rows and the strip's edge. A line that is shifted
             10 cm shifts every strip.
          4. Calibrate the planter and dig up seed; a prescription does not check what is planted.
          5. Keep people away from moving machines; stop and lock them before you clear a row unit.

        """);
    text.append(SprayText.booms(layout));
    text.append(
        """
        SPRAYING NEXT TO ANOTHER CROP
          Every pass has the other crop at its edge. The label is the law: read it for both crops, drift,
          wind, buffers and nozzles. Both crops must tolerate whatever may drift or drip onto them, or it
          is not sprayed there. Keep to the wind speeds of the label, and never spray in an inversion.
          Restricted-use products only by or under a certified applicator, and whoever sprays holds the
          licence that the law asks for. Follow local codes. This is no pesticide recommendation.

        Yields of strips depend on water, hybrids and weather; nothing here promises one.
        """);
    return text.toString();
  }

  private static String together(List<String> endings) {
    return endings.size() == 1 ? "" : "; keep " + String.join(" ", endings) + " together";
  }
}
