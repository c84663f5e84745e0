package org.lynchet.prescription.handoff;

import java.util.List;
import java.util.Locale;
import org.lynchet.prescription.paper.SprayPapers;
import org.lynchet.prescription.paper.SprayRules;
import org.lynchet.prescription.plan.PlannedGuidance.Position;
import org.lynchet.prescription.quantity.AreaUnit;
import org.lynchet.prescription.setback.SprayPlan;
import org.lynchet.prescription.zone.FieldLayout;

/** Writes the applicator's README.txt: areas, files, and what holds for spraying between crops. */
final class ApplicatorText {
  private static final int WIDTH = 100;

  private final FieldLayout layout;
  private final SprayPlan spray;
  private final AreaUnit unit;
  private final List<HandoffFile> tables;
  private final StringBuilder text = new StringBuilder();

  ApplicatorText(FieldLayout layout, SprayPlan spray, AreaUnit unit, List<HandoffFile> tables) {
    this.layout = layout;
    this.spray = spray;
    this.unit = unit;
    this.tables = tables;
  }

  String write() {
    text.append(layout.plan().field().name()).append(": for the applicator\n\n");
    areas();
    Position entrance = layout.plan().field().entrance();
    if (entrance != null) {
      text.append(
          String.format(
                  Locale.ROOT,
                  "%nEntrance: latitude %.6f, longitude %.6f%n",
                  entrance.latitudeDegrees(),
                  entrance.longitudeDegrees())
              .replace(System.lineSeparator(), "\n"));
    }
    text.append("\nFILES\n");
    tables.forEach(table -> file(table.path(), purpose(table)));
    file(SprayPapers.MAP, "the map on one page, to print");
    file(SprayPapers.RECORD, "a record of each crop's application, to be filled in");
    file(OutputFolder.SUMMARY, "areas for programs, and digests of all files");
    text.append(
        """

        All coordinates are WGS 84 longitude and latitude; keep .shp .shx .dbf .prj .cpg together.
        Headland is strip 0, pass 0. Lines run on through what is set aside: shut the boom there, by the
        areas in the files.

        """);
    text.append(SprayText.settings(layout.spraying()));
    text.append("SPRAYING NEXT TO ANOTHER CROP\n");
    SprayRules.statements(unit).forEach(this::statement);
    return text.toString();
  }

  private void areas() {
    line("CROP", "SPRAYED " + unit.symbol(), "SET ASIDE " + unit.symbol());
    double sprayed = 0;
    double setAside = 0;
    for (String crop : layout.spraying().crops()) {
      double ofCrop = spray.sprayedSquareMetres(crop);
      double asideOfCrop = spray.setAsideSquareMetres(crop);
      line(crop, area(ofCrop), area(asideOfCrop));
      sprayed += ofCrop;
      setAside += asideOfCrop;
    }
    line("together", area(sprayed), area(setAside));
  }

  private String area(double squareMetres) {
    return String.format(Locale.ROOT, "%.2f", squareMetres / unit.squareMetres());
  }

  private void line(String crop, String sprayed, String setAside) {
    text.append(String.format(Locale.ROOT, "%-34s %14s %14s", crop, sprayed, setAside));
    text.append('\n');
  }

  private static String purpose(HandoffFile table) {
    if (table.path().startsWith(Handoff.SPRAY_LINES)) {
      return "the line that each pass drives, with its open sections";
    }
    return table.path().equals(ApplicatorFolder.SET_ASIDE)
        ? "what is not sprayed, by the setbacks"
        : "what each pass sprays";
  }

  private void file(String path, String what) {
    text.append("  ").append(path).append(" ".repeat(Math.max(1, 32 - path.length())));
    text.append(what).append('\n');
  }

  private void statement(String words) {
    StringBuilder line = new StringBuilder("  -");
    for (String word : words.split(" ", -1)) {
      if (line.length() + 1 + word.length() > WIDTH) {
        text.append(line).append('\n');
        line.setLength(0);
        line.append("   ");
      }
      line.append(' ').append(word);
    }
    text.append(line).append('\n');
  }
}
