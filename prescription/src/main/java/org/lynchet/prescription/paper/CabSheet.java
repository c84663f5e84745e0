package org.lynchet.prescription.paper;

import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import org.lynchet.prescription.driving.DrivingPlan;
import org.lynchet.prescription.driving.Loading;
import org.lynchet.prescription.driving.LoadingChart;
import org.lynchet.prescription.driving.LoadingChart.Misplanted;
import org.lynchet.prescription.driving.PlanterDriving;
import org.lynchet.prescription.driving.UnitRanges;
import org.lynchet.prescription.machine.Planter;
import org.lynchet.prescription.picture.FieldOnSheet;
import org.lynchet.prescription.picture.Sheet;
import org.lynchet.prescription.quantity.LengthUnit;
import org.lynchet.prescription.summary.SeedOrder;
import org.lynchet.prescription.summary.Summary;
import org.lynchet.prescription.zone.FieldLayout;

/**
 * Lays out the cab sheet of one planter: map, AB line, order of the passes, loading chart, widths,
 * seed, and rates by zone. The text is as large as fits, and the map takes what is left.
 */
final class CabSheet {
  private static final double WIDTH = Sheet.WIDTH - 2 * Sheet.MARGIN;
  private static final double HEAD = 44;
  private static final double GAP = 8;

  /** Where machines begin beside the AB line. */
  private static final double HALF = 310;

  private static final double AB_WIDTH = HALF - GAP;
  private static final double LARGEST = 13;
  private static final double READABLE = 10;
  private static final double SMALLEST = 8;

  /** Letters of the map and of the boxes are larger than on map.svg. */
  private static final double MAP_SCALE = 1.35;

  private static final double LOADING_SCALE = 1.6;
  private static final double LEGEND_SCALE = 1.1;
  private static final int LEGEND_COLUMNS = 2;

  /** The text gets smaller before the map gets lower than the first of these, then the map does. */
  private static final double[] LEAST_MAPS = {235, 200, 165};

  private static final int MOST_EXCEPTIONS = 4;

  private final FieldLayout layout;
  private final Summary summary;
  private final FieldOnSheet field;
  private final List<PlanterDriving> driven;
  private final Planter planter;
  private final LengthUnit unit;
  private final Flow guidance;
  private final Flow machines;
  private final Flow order;
  private final Flow loading;

  /**
   * The sheet of a planter.
   *
   * @param driven all that is driven with it, at least one crop
   */
  CabSheet(FieldLayout layout, Summary summary, FieldOnSheet field, List<PlanterDriving> driven) {
    this.layout = layout;
    this.summary = summary;
    this.field = field;
    this.driven = driven;
    this.planter = driven.get(0).planter();
    this.unit = PaperUnits.length(summary);
    this.guidance = guidance();
    this.machines = machines();
    this.order = order();
    this.loading = loading();
  }

  Sheet make() {
    Sheet sheet = new Sheet();
    double top = Sheet.MARGIN;
    head(sheet, top);
    double bottom = Sheet.HEIGHT - Sheet.MARGIN;
    double legendTop = bottom - field.legendHeight(LEGEND_COLUMNS, LEGEND_SCALE);
    field.addLegend(sheet, Sheet.MARGIN, legendTop, LEGEND_COLUMNS, LEGEND_SCALE);
    double boxes = FieldOnSheet.loadingHeight(LOADING_SCALE) * boxRows();
    double room = legendTop - GAP - top - HEAD - boxes;
    double least = LEAST_MAPS[LEAST_MAPS.length - 1];
    double size = size(room);
    double text = Math.min(height(size), room - least);
    double map = room - text - GAP;
    field.addMap(sheet, Sheet.MARGIN, top + HEAD, WIDTH, map, MAP_SCALE);
    write(sheet, top + HEAD + map + GAP, legendTop - GAP, size);
    sheet.line(Sheet.MARGIN, legendTop - GAP / 2, Sheet.MARGIN + WIDTH, legendTop - GAP / 2, 0.8);
    return sheet;
  }

  /** The largest size of the texts that leaves enough of a room to the map. */
  private double size(double room) {
    for (double least : LEAST_MAPS) {
      for (double size = LARGEST; size >= READABLE; size -= 0.5) {
        if (room - height(size) >= least) {
          return size;
        }
      }
    }
    double size = READABLE;
    while (size > SMALLEST && room - height(size) < LEAST_MAPS[LEAST_MAPS.length - 1]) {
      size -= 0.5;
    }
    return size;
  }

  /** The height of the texts at a size. */
  private double height(double size) {
    return beside(size) + order.height(WIDTH, size) + loading.height(WIDTH, size);
  }

  private double beside(double size) {
    return Math.max(guidance.height(AB_WIDTH, size), machines.height(WIDTH - HALF, size));
  }

  private void write(Sheet sheet, double top, double bottom, double size) {
    double y = top;
    guidance.write(sheet, Sheet.MARGIN, y, AB_WIDTH, bottom - y, size);
    machines.write(sheet, Sheet.MARGIN + HALF, y, WIDTH - HALF, bottom - y, size);
    y += beside(size);
    order.write(sheet, Sheet.MARGIN, y, WIDTH, bottom - y, size);
    y += order.height(WIDTH, size);
    if (y < bottom) {
      y += boxes(sheet, y);
      loading.write(sheet, Sheet.MARGIN, y, WIDTH, bottom - y, size);
    }
  }

  private void head(Sheet sheet, double top) {
    sheet.title(layout.plan().field().name(), "");
    String crops = driven.stream().map(PlanterDriving::crop).collect(Collectors.joining(", "));
    String words = MachineText.of(planter, unit) + " \u00b7 " + crops;
    sheet.bold(Sheet.cut(words, WIDTH, LARGEST, true), Sheet.MARGIN, top + 36, LARGEST);
  }

  private Flow guidance() {
    Flow flow = new Flow().heading(GuidanceText.heading(layout));
    GuidanceText.lines(layout).forEach(flow::line);
    return flow;
  }

  private Flow machines() {
    Flow flow = new Flow().heading("WIDTHS");
    layout.plan().machines().values().forEach(one -> flow.line(MachineText.brief(one, unit)));
    return flow;
  }

  private Flow order() {
    Flow flow = new Flow();
    for (PlanterDriving one : driven) {
      DrivingPlan plan = served(one);
      flow.heading("ORDER, " + one.crop() + ": " + plan.order().words());
      flow.line(plan.tripsInWords() + "   (+7: pass 7 from A to B; -7: from B to A)");
    }
    return flow.heading("ROW UNITS, from left to right as you drive");
  }

  /** The order that a loading serves, if there is one; else the one with the least turning. */
  private static DrivingPlan served(PlanterDriving one) {
    return usable(one).map(Loading.Charted::plan).orElse(one.chosen());
  }

  private static Optional<Loading.Charted> usable(PlanterDriving one) {
    Loading loading = one.loading();
    return loading == null ? Optional.empty() : loading.findUsable();
  }

  private long boxRows() {
    return driven.stream()
        .flatMap(one -> usable(one).stream())
        .filter(one -> one.chart().products().stream().distinct().count() > 1)
        .count();
  }

  private double boxes(Sheet sheet, double top) {
    double height = 0;
    for (PlanterDriving one : driven) {
      height += field.addLoading(sheet, one, Sheet.MARGIN, top + height, WIDTH, LOADING_SCALE);
    }
    return height;
  }

  private Flow loading() {
    Flow flow = new Flow();
    driven.forEach(one -> addLoading(one, flow));
    List<String> rates = new ZoneRates(layout, summary, planter).lines();
    if (!rates.isEmpty()) {
      flow.heading("RATES by management zone");
      rates.forEach(flow::line);
    }
    flow.heading("SEED, reserve not counted");
    flow.line(
        summary.seed().stream()
            .filter(order -> driven.stream().anyMatch(one -> one.crop().equals(order.crop())))
            .map(this::seed)
            .collect(Collectors.joining("; ")));
    return flow;
  }

  private void addLoading(PlanterDriving one, Flow flow) {
    Loading loading = one.loading();
    String crop = driven.size() > 1 ? one.crop() + ", " : "";
    if (loading == null) {
      flow.line(crop + "one central hopper");
      return;
    }
    Optional<Loading.Charted> usable = usable(one);
    if (usable.isEmpty()) {
      flow.line(crop + "NO LOADING SERVES EVERY PASS: see README.txt");
      loading.advice().forEach(way -> flow.line("instead: " + way));
      return;
    }
    LoadingChart chart = usable.get().chart();
    flow.line(
        crop
            + UnitRanges.byProduct(chart).entrySet().stream()
                .map(entry -> UnitRanges.of(entry.getValue()) + ": " + entry.getKey())
                .collect(Collectors.joining("; ")));
    chart.exceptions().stream().limit(MOST_EXCEPTIONS).forEach(rows -> flow.line(exception(rows)));
    if (chart.exceptions().size() > MOST_EXCEPTIONS) {
      flow.line("and " + (chart.exceptions().size() - MOST_EXCEPTIONS) + " more, see README.txt");
    }
    List<Integer> unlike = Loading.unitsUnlike(loading.headlandProduct(), chart);
    if (!unlike.isEmpty()) {
      flow.line(
          "HEADLAND: "
              + loading.headlandProduct()
              + " in every row unit; change "
              + UnitRanges.of(unlike));
    }
  }

  private static String exception(Misplanted rows) {
    return "EXCEPT pass "
        + rows.pass()
        + ": row units "
        + UnitRanges.of(rows.units())
        + " take "
        + rows.wanted()
        + ", not "
        + rows.loaded();
  }

  private String seed(SeedOrder order) {
    return order.product()
        + ": "
        + PaperUnits.area(order.areaSquareMetres(), summary)
        + ", "
        + PaperUnits.seeds(order.seeds());
  }
}
