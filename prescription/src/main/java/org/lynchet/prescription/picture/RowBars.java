package org.lynchet.prescription.picture;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.OptionalDouble;
import org.lynchet.prescription.light.CanopyRow;
import org.lynchet.prescription.light.Compass;
import org.lynchet.prescription.quantity.Spread;
import org.lynchet.prescription.zone.Zone;

/**
 * Draws how far each row is above or below a wide block, as bars from a line at 0 %, small enough
 * for a phone.
 */
final class RowBars {
  /** What is shown of the scene. */
  static final Box VIEW = new Box(0, 0, 400, 236);

  private static final Box PLOT = new Box(44, 22, 394, 212);
  private static final double SMALL = 10;
  private static final int GRID = 0xC8C8C8;
  private static final double WIDTH = 0.82;
  private static final double LEAST = 0.1;
  private static final double MOST_TICKS = 8;
  private static final double[] STEPS = {0.05, 0.1, 0.2, 0.5, 1};

  /**
   * One row.
   *
   * @param row the row
   * @param value relative to a wide block: the bar, and the line over it from low to high
   * @param mark another value, as a short line
   */
  record Bar(CanopyRow row, Spread value, OptionalDouble mark) {}

  private final AcrossScale across;
  private final double headingDegrees;
  private final double step;
  private final double least;
  private final double most;

  private RowBars(List<Bar> bars, double headingDegrees) {
    this.headingDegrees = headingDegrees;
    this.across = new AcrossScale(bars.stream().map(Bar::row).toList(), PLOT);
    double low = -LEAST;
    double high = LEAST;
    for (Bar bar : bars) {
      low = Math.min(low, Math.min(bar.value().low(), bar.mark().orElse(1)) - 1);
      high = Math.max(high, Math.max(bar.value().high(), bar.mark().orElse(1)) - 1);
    }
    this.step = step(high - low);
    this.least = Math.floor(low / step) * step;
    this.most = Math.ceil(high / step) * step;
  }

  /** The step of the grid. */
  private static double step(double span) {
    for (double step : STEPS) {
      if (span / step <= MOST_TICKS) {
        return step;
      }
    }
    return STEPS[STEPS.length - 1];
  }

  static Scene scene(List<Bar> bars, double headingDegrees, String title, String description) {
    RowBars chart = new RowBars(bars, headingDegrees);
    List<Mark> areas = new ArrayList<>();
    List<Mark> lines = new ArrayList<>();
    for (Bar bar : bars) {
      chart.add(bar, areas, lines);
    }
    return new Scene(
        title,
        description,
        List.of(
            new Scene.Layer("grid", chart.grid()),
            new Scene.Layer("bars", areas),
            new Scene.Layer("lines", lines),
            new Scene.Layer("strips", chart.across.strips()),
            new Scene.Layer("sides", chart.sides())));
  }

  private double y(double relative) {
    return PLOT.bottom() - (relative - 1 - least) / (most - least) * PLOT.height();
  }

  private void add(Bar bar, List<Mark> areas, List<Mark> lines) {
    CanopyRow row = bar.row();
    double cell = across.right(row) - across.left(row);
    double half = cell * WIDTH / 2;
    double x = across.centre(row);
    double y = y(bar.value().typical());
    Box box = new Box(x - half, Math.min(y, y(1)), x + half, Math.max(y, y(1)));
    int crop = across.crops().getOrDefault(row.crop(), 0);
    areas.add(Mark.Area.plain(Outline.of(box), Palette.fill(crop, Zone.Kind.BORDER)));
    double width = Math.min(1, cell / 3);
    if (bar.value().low() < bar.value().high()) {
      lines.add(line(x, y(bar.value().low()), x, y(bar.value().high()), width));
    }
    bar.mark()
        .ifPresent(value -> lines.add(line(x - half, y(value), x + half, y(value), 2 * width)));
  }

  private static Mark line(double x, double y, double toX, double toY, double width) {
    return new Mark.Line(Outline.line(x, y, toX, toY), Scene.INK, width, 0);
  }

  private List<Mark> grid() {
    List<Mark> marks = new ArrayList<>();
    int ticks = (int) Math.round((most - least) / step);
    for (int i = 0; i <= ticks; i++) {
      double value = least + i * step;
      boolean zero = Math.abs(value) < step / 2;
      double y = y(1 + value);
      marks.add(
          new Mark.Line(
              Outline.line(PLOT.left(), y, PLOT.right(), y),
              zero ? Scene.INK : GRID,
              zero ? 1 : 0.5,
              0));
      String text = zero ? "0 %" : String.format(Locale.ROOT, "%+.0f %%", 100 * value);
      marks.add(Mark.Text.right(text, PLOT.left() - 5, y + 3.5, SMALL));
    }
    return marks;
  }

  private List<Mark> sides() {
    return List.of(
        Mark.Text.left(Compass.point(headingDegrees - 90), PLOT.left(), PLOT.top() - 9, SMALL),
        Mark.Text.right(Compass.point(headingDegrees + 90), PLOT.right(), PLOT.top() - 9, SMALL));
  }
}
