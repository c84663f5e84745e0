package org.lynchet.prescription.paper;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.locationtech.jts.geom.Coordinate;
import org.lynchet.prescription.picture.PdfFile;
import org.lynchet.prescription.picture.Sheet;
import org.lynchet.prescription.picture.SprayMap;
import org.lynchet.prescription.plan.PlannedGuidance.Position;
import org.lynchet.prescription.quantity.AreaUnit;
import org.lynchet.prescription.setback.SprayPlan;
import org.lynchet.prescription.zone.FieldLayout;

/** Writes the applicator's papers: the spray map on one page, and a record to fill in. */
public final class SprayPapers {
  /** The map's file. */
  public static final String MAP = "spray-map.pdf";

  /** The record's file. */
  public static final String RECORD = "spray-record.pdf";

  private static final double WIDTH = Sheet.WIDTH - 2 * Sheet.MARGIN;
  private static final double SIZE = 11;
  private static final double HEAD = 44;
  private static final double GAP = 8;
  private static final double MAP_SCALE = 1.25;
  private static final double LEGEND_SCALE = 1.1;
  private static final int COLUMNS = 2;

  private final FieldLayout layout;
  private final SprayPlan spray;
  private final AreaUnit unit;

  private SprayPapers(FieldLayout layout, SprayPlan spray, AreaUnit unit) {
    this.layout = layout;
    this.spray = spray;
    this.unit = unit;
  }

  /**
   * Writes both into a folder and opens them again.
   *
   * @param unit acres or hectares
   * @return what does not read back as meant; empty if all does
   * @throws IOException if a file cannot be written
   */
  public static List<String> write(FieldLayout layout, SprayPlan spray, AreaUnit unit, Path folder)
      throws IOException {
    SprayPapers papers = new SprayPapers(layout, spray, unit);
    String field = layout.plan().field().name();
    List<String> differences = new ArrayList<>();
    differences.addAll(
        PdfFile.writeAndCheck(field + ": spray map", List.of(papers.map()), folder.resolve(MAP)));
    List<Sheet> records =
        layout.spraying().crops().stream()
            .map(
                crop ->
                    new SprayRecord(field, crop, area(spray.sprayedSquareMetres(crop), unit), unit))
            .map(SprayRecord::make)
            .toList();
    differences.addAll(
        PdfFile.writeAndCheck(field + ": spray record", records, folder.resolve(RECORD)));
    return differences;
  }

  private static String area(double squareMetres, AreaUnit unit) {
    return String.format(
        Locale.ROOT, "%,.2f %s", squareMetres / unit.squareMetres(), unit.symbol());
  }

  private Sheet map() {
    Sheet sheet = new Sheet();
    SprayMap map = SprayMap.of(layout, spray);
    sheet.title(layout.plan().field().name(), ": spray map");
    String facts =
        String.format(
            Locale.ROOT,
            "%s \u00b7 heading %.1f\u00b0 \u00b7 north is up \u00b7 WGS 84",
            "field " + area(layout.areaSquareMetres(), unit),
            layout.frame().headingDegrees());
    sheet.text(facts, Sheet.MARGIN, Sheet.MARGIN + 35, SIZE);
    Flow notes = notes();
    double bottom = Sheet.HEIGHT - Sheet.MARGIN;
    double notesTop = bottom - notes.height(WIDTH, SIZE);
    double legendTop = notesTop - GAP - map.legendHeight(COLUMNS, LEGEND_SCALE);
    double top = Sheet.MARGIN + HEAD;
    map.addMap(sheet, Sheet.MARGIN, top, WIDTH, legendTop - GAP - top, MAP_SCALE);
    map.addLegend(sheet, Sheet.MARGIN, legendTop, COLUMNS, LEGEND_SCALE);
    sheet.line(Sheet.MARGIN, notesTop - 3, Sheet.WIDTH - Sheet.MARGIN, notesTop - 3, 0.8);
    notes.write(sheet, Sheet.MARGIN, notesTop, WIDTH, bottom - notesTop, SIZE);
    return sheet;
  }

  private Flow notes() {
    Flow notes = new Flow();
    GuidanceText.lines(layout).stream().limit(2).forEach(notes::line);
    Position entrance = layout.plan().field().entrance();
    if (entrance != null) {
      notes.line(
          "entrance: "
              + GuidanceText.place(
                  new Coordinate(entrance.longitudeDegrees(), entrance.latitudeDegrees())));
    }
    return notes
        .line("Sections are counted from the left end of the boom, looking from A to B.")
        .line("The label is the law. No product and no rate is given here: see README.txt.");
  }
}
