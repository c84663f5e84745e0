package org.lynchet.prescription.handoff;

import java.util.List;
import java.util.stream.Collectors;
import org.lynchet.prescription.plan.HandoffChoices.Format;
import org.lynchet.prescription.quantity.Count;
import org.lynchet.prescription.spraying.SprayPass;
import org.lynchet.prescription.spraying.SprayedArea;
import org.lynchet.prescription.spraying.Spraying;
import org.lynchet.prescription.zone.FieldLayout;

/** Says in README.txt which files are for spraying, and how the boom is set in each crop. */
final class SprayText {
  private SprayText() {}

  /** The lines of the file list; empty without a sprayer. */
  static String files(FieldLayout layout) {
    StringBuilder text = new StringBuilder();
    for (String crop : layout.spraying().crops()) {
      for (Format format : HandoffFile.ofOneTable(layout.plan().handoff().formats())) {
        String name = "/" + crop + format.file().ending();
        text.append(file(Handoff.SPRAYING + name, "what each spray pass sprays of " + crop));
        if (!passes(layout.spraying(), crop).isEmpty()) {
          text.append(file(Handoff.SPRAY_LINES + name, "the line that the sprayer drives"));
        }
      }
    }
    return text.toString();
  }

  private static String file(String path, String what) {
    return "  " + path + " ".repeat(Math.max(1, 25 - path.length())) + what + "\n";
  }

  /** How the boom is set in each crop; empty without a sprayer. */
  static String booms(FieldLayout layout) {
    Spraying spraying = layout.spraying();
    if (spraying.crops().isEmpty()) {
      return "";
    }
    if (HandoffFile.ofOneTable(layout.plan().handoff().formats()).isEmpty()) {
      return "SPRAYING\n  no files: add shapefile or geojson to handoff.formats for them\n\n";
    }
    return settings(spraying);
  }

  /** How the boom is set in each crop that is sprayed, at least one. */
  static String settings(Spraying spraying) {
    StringBuilder text = new StringBuilder("SPRAYING\n");
    spraying.crops().forEach(crop -> text.append(boom(spraying, crop)));
    return text.append(
            """
              Sections are counted from the left end of the boom looking from A to B: driven from B to A,
              count them from the right. OPEN_FROM and OPEN_TO in the files are the first and the last
              open section. Spray passes are numbered from left to right in each crop.
              At slanted ends shut sections one by one, by the areas in the files: lines run on until
              the last of a pass's swath has left the field.
              No product and no rate is given here: they are the applicator's.

            """)
        .toString();
  }

  private static String boom(Spraying spraying, String crop) {
    List<SprayPass> passes = passes(spraying, crop);
    String machine =
        spraying.areas().stream()
            .filter(area -> area.crop().equals(crop))
            .map(SprayedArea::machine)
            .findFirst()
            .orElseThrow();
    StringBuilder text = new StringBuilder();
    text.append("  ").append(crop).append(": ").append(machine).append(", ");
    text.append(Count.of(passes.size(), "pass"));
    String open =
        passes.stream().map(SprayPass::openInWords).distinct().collect(Collectors.joining(" or "));
    text.append(open.isEmpty() ? "" : ", " + open);
    text.append('\n');
    if (spraying.areas().stream().anyMatch(area -> area.crop().equals(crop) && area.strip() == 0)) {
      text.append(
          "    headland (strip 0, pass 0) has no lines: the driver goes around the boundary\n");
    }
    return text.toString();
  }

  private static List<SprayPass> passes(Spraying spraying, String crop) {
    return spraying.passes().stream().filter(pass -> pass.crop().equals(crop)).toList();
  }
}
