package org.lynchet.prescription.paper;

import java.util.List;
import org.lynchet.prescription.picture.Sheet;
import org.lynchet.prescription.quantity.AreaUnit;

/**
 * Lays out the record of one crop's application, blank but for field, crop and area: the licensed
 * applicator fills it in. Below it stands what holds for spraying next to another crop.
 */
final class SprayRecord {
  private static final double LEFT = Sheet.MARGIN;
  private static final double RIGHT = Sheet.WIDTH - Sheet.MARGIN;
  private static final double MIDDLE = (LEFT + RIGHT) / 2;
  private static final double SIZE = 11.5;
  private static final double GAP = 12;

  /** Rows are as high as there is room, for writing by hand, but not higher than this. */
  private static final double MOST_ROW = 38;

  private final String field;
  private final String crop;
  private final String area;
  private final AreaUnit unit;

  /**
   * The record of a crop.
   *
   * @param area what is planned, with its unit
   * @param unit acres or hectares
   */
  SprayRecord(String field, String crop, String area, AreaUnit unit) {
    this.field = field;
    this.crop = crop;
    this.area = area;
    this.unit = unit;
  }

  /** What is asked for, two to a row; the second is empty where the first takes the whole row. */
  private List<List<String>> asked() {
    String per = unit == AreaUnit.ACRE ? "per acre" : "per hectare";
    return List.of(
        List.of("Date", "Start and end time"),
        List.of("Product", ""),
        List.of("EPA registration number", "Restricted-use product (yes / no)"),
        List.of("Rate of product " + per, "Total of product"),
        List.of("Carrier " + per, "Adjuvants"),
        List.of("Target pest", "Crop stage, both crops"),
        List.of("Nozzles and droplet size", "Boom height, pressure, speed"),
        List.of("Wind speed, start and end", "Wind direction, start and end"),
        List.of("Air temperature, humidity", "Inversion looked for (how)"),
        List.of("Strips sprayed", "Area sprayed"),
        List.of("Re-entry not before", "Harvest not before"),
        List.of("Applicator's name", "Licence number, state"),
        List.of("Signature", "Date of the record"));
  }

  Sheet make() {
    Sheet sheet = new Sheet();
    sheet.title(field, ": record of spraying " + crop);
    sheet.text(
        "To be filled in by the licensed applicator. Planned for spraying: " + area + ".",
        LEFT,
        LEFT + 34,
        SIZE);
    Flow statements = new Flow();
    SprayRules.statements(unit).forEach(statements::line);
    double height = statements.height(RIGHT - LEFT, SIZE);
    double bottom = Sheet.HEIGHT - Sheet.MARGIN;
    double y = LEFT + 40;
    double row = Math.min(MOST_ROW, (bottom - height - GAP - y) / asked().size());
    for (List<String> asked : asked()) {
      y += row;
      blank(sheet, asked.get(0), LEFT, asked.get(1).isEmpty() ? RIGHT : MIDDLE - 8, y);
      if (!asked.get(1).isEmpty()) {
        blank(sheet, asked.get(1), MIDDLE, RIGHT, y);
      }
    }
    statements.write(sheet, LEFT, bottom - height, RIGHT - LEFT, height, SIZE);
    return sheet;
  }

  private static void blank(Sheet sheet, String label, double left, double right, double y) {
    sheet.text(label + ":", left, y - 3, SIZE);
    double begin = left + Sheet.widthOf(label + ":", SIZE, false) + 2;
    sheet.line(begin, y, right, y, 0.7);
  }
}
