package org.lynchet.prescription.paper;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.lynchet.prescription.picture.Sheet;
import org.lynchet.prescription.quantity.SeedingRate;
import org.lynchet.prescription.summary.SeedOrder;
import org.lynchet.prescription.summary.Summary;
import org.lynchet.prescription.summary.ZoneTotal;
import org.lynchet.prescription.zone.FieldLayout;

/**
 * Lays out the seed sheet: units to order by product, then what each planter takes, border, centre
 * and headland apart, to drop off and load by. It goes on over further pages where it has to.
 */
final class SeedSheet {
  private static final double LEFT = Sheet.MARGIN;
  private static final double RIGHT = Sheet.WIDTH - Sheet.MARGIN;
  private static final double HEADING = 14;
  private static final double SIZE = 12;
  private static final double SMALL = 10;
  private static final double SMALLEST = 9;
  private static final double ROW = 32;

  /** Where the columns of numbers end. */
  private static final double AREA = 350;

  private static final double SEEDS = 455;

  private final FieldLayout layout;
  private final Summary summary;
  private final List<Sheet> sheets = new ArrayList<>();
  private Sheet sheet = new Sheet();
  private double y;

  SeedSheet(FieldLayout layout, Summary summary) {
    this.layout = layout;
    this.summary = summary;
  }

  List<Sheet> make() {
    begin();
    heading("TO ORDER, reserve counted");
    summary.seed().forEach(this::order);
    for (String planter : layout.plan().machines().keySet()) {
      List<SeedPart> parts =
          SeedPart.of(layout).stream().filter(part -> part.planter().equals(planter)).toList();
      if (!parts.isEmpty()) {
        heading("FOR " + planter);
        parts.forEach(this::part);
      }
    }
    Flow note =
        new Flow()
            .line(
                "Drop off and load border, centre and headland apart. Parts of units are shares of"
                    + " the order. Rates are as set on the planter.");
    double height = note.height(RIGHT - LEFT, SMALL);
    room(height + SMALL);
    note.write(sheet, LEFT, y + SMALL / 2, RIGHT - LEFT, height, SMALL);
    return sheets;
  }

  private void begin() {
    sheet = new Sheet();
    sheets.add(sheet);
    String page = sheets.size() > 1 ? ", page " + sheets.size() : "";
    sheet.title(layout.plan().field().name(), ": seed" + page);
    y = Sheet.MARGIN + 34;
  }

  /** Begins a new page where so much does not fit any more. */
  private void room(double height) {
    if (y + height > Sheet.HEIGHT - Sheet.MARGIN) {
      begin();
    }
  }

  private void heading(String words) {
    room(HEADING + 16 + 2 * ROW);
    y += 14;
    fitted(words, y + HEADING, AREA - LEFT - 35, HEADING);
    sheet.right("area", AREA, y + HEADING, SMALL);
    sheet.right("seeds", SEEDS, y + HEADING, SMALL);
    sheet.right("units", RIGHT, y + HEADING, SMALL);
    y += HEADING + 5;
    sheet.line(LEFT, y, RIGHT, y, 1);
  }

  private void order(SeedOrder order) {
    Long units = order.units();
    List<SeedingRate> rates =
        summary.zones().stream()
            .filter(zone -> zone.product().equals(order.product()) && zone.rate().seeds() > 0)
            .map(ZoneTotal::rate)
            .distinct()
            .toList();
    Integer perUnit = order.seedsPerUnit();
    String ordered =
        perUnit == null
            ? "seeds in a unit not known"
            : String.format(Locale.ROOT, "units of %,d seeds", perUnit);
    row(
        order.product() + ", " + order.crop(),
        SeedPart.words(rates)
            + "; "
            + ordered
            + ", reserve "
            + MachineText.number(order.reserve() * 100)
            + " %",
        order.areaSquareMetres(),
        order.seeds() * (1 + order.reserve()),
        units == null ? "-" : String.format(Locale.ROOT, "%,d", units));
  }

  private void part(SeedPart part) {
    SeedOrder order =
        summary.seed().stream()
            .filter(one -> one.product().equals(part.product()))
            .findFirst()
            .orElseThrow();
    Integer perUnit = order.seedsPerUnit();
    row(
        part.kind().word() + ": " + part.product() + ", " + part.crop(),
        SeedPart.words(part.rates()),
        part.areaSquareMetres(),
        part.seeds() * (1 + order.reserve()),
        perUnit == null ? "-" : SeedPart.units(part.seeds(), order.reserve(), perUnit));
  }

  private void row(String first, String second, double area, double seeds, String units) {
    room(ROW);
    double base = y + 15;
    fitted(first, base, AREA - LEFT - 80, SIZE);
    sheet.right(PaperUnits.area(area, summary), AREA, base, SIZE);
    sheet.right(String.format(Locale.ROOT, "%,.0f", seeds), SEEDS, base, SIZE);
    sheet.right(units, RIGHT, base, HEADING);
    sheet.text(Sheet.cut(second, RIGHT - LEFT, SMALL, false), LEFT, base + 12, SMALL);
    y += ROW;
    sheet.line(LEFT, y, RIGHT, y, 0.4);
  }

  /** Words in bold, smaller if they are long: names are told apart by their ends as well. */
  private void fitted(String words, double base, double room, double largest) {
    double size = largest;
    while (size > SMALLEST && Sheet.widthOf(words, size, true) > room) {
      size -= 0.5;
    }
    sheet.bold(Sheet.cut(words, room, size, true), LEFT, base, size);
  }
}
