package org.lynchet.prescription.paper;

import java.util.List;
import org.lynchet.prescription.picture.Sheet;

/**
 * Lays out the record of one crop's application, blank but for field, crop and area: the licensed
 * applicator fills it in. Below it stands what holds for spraying next to another crop.
 */
final class SprayRecord {
  private static final double LEFT = Sheet.MARGIN;
  private static final double RIGHT = Sheet.WIDTH - Sheet.MARGIN;
  private static final double MIDDLE = (LEFT + RIGHT) / 2;
  private static final double SIZE = 11;
  private static final double SMALL = 11;
  private static final double ROW = 27;

  /** What is asked for, two to a row; the second is empty where the first takes the whole row. */
  private static final List<List<String>> ASKED =
      List.of(
          List.of("Date", "Start and end time"),
          List.of("Product", ""),
          List.of("EPA registration number", "Restricted-use product (yes / no)"),
          List.of("Rate of product per acre", "Total of product"),
          List.of("Carrier per acre", "Adjuvants"),
          List.of("Target pest", "Crop stage, both crops"),
          List.of("Nozzles and droplet size", "Boom height, pressure, speed"),
          List.of("Wind speed, start and end", "Wind direction, start and end"),
          List.of("Air temperature, humidity", "Inversion looked for (how)"),
          List.of("Strips sprayed", "Area sprayed"),
          List.of("Re-entry not before", "Harvest not before"),
          List.of("Applicator's name", "Licence number, state"),
          List.of("Signature", "Date of the record"));

  private final String field;
  private final String crop;
  private final String area;

  SprayRecord(String field, String crop, String area) {
    this.field = field;
    this.crop = crop;
    this.area = area;
  }

  Sheet make() {
    Sheet sheet = new Sheet();
    sheet.title(field, ": record of spraying " + crop);
    sheet.text(
        "To be filled in by the licensed applicator. Planned for spraying: " + area + ".",
        LEFT,
        LEFT + 34,
        SIZE);
    double y = LEFT + 40;
    for (List<String> row : ASKED) {
      y += ROW;
      blank(sheet, row.get(0), LEFT, row.get(1).isEmpty() ? RIGHT : MIDDLE - 8, y);
      if (!row.get(1).isEmpty()) {
        blank(sheet, row.get(1), MIDDLE, RIGHT, y);
      }
    }
    Flow statements = new Flow();
    SprayRules.statements().forEach(statements::line);
    double bottom = Sheet.HEIGHT - Sheet.MARGIN;
    statements.write(sheet, LEFT, y + 12, RIGHT - LEFT, bottom - y - 12, SMALL);
    return sheet;
  }

  private static void blank(Sheet sheet, String label, double left, double right, double y) {
    sheet.text(label + ":", left, y - 3, SIZE);
    double begin = left + Sheet.widthOf(label + ":", SIZE, false) + 2;
    sheet.line(begin, y, right, y, 0.7);
  }
}
