package org.lynchet.prescription.picture;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.lynchet.prescription.light.CanopyRow;
import org.lynchet.prescription.light.CanopyTraits;
import org.lynchet.prescription.light.Compass;
import org.lynchet.prescription.light.LightResult;
import org.lynchet.prescription.light.RowLight;
import org.lynchet.prescription.zone.Zone;

/** Lays out the chart of light by row position. */
final class RowChartMaker {
  private static final Box PLOT = new Box(66, 84, 764, 392);
  private static final Box SECTION = new Box(66, 420, 764, 520);
  private static final double SMALL = 9;
  private static final double TITLE_WIDTH = 736;
  private static final double TICK = 0.2;
  private static final int GRID = 0xC8C8C8;

  /** The widest that a canopy is drawn, as a share of its cell, so that rows can be told apart. */
  private static final double CANOPY = 0.82;

  private final LightResult light;
  private final String field;
  private final AcrossScale across;
  private final double top;

  RowChartMaker(LightResult light, String field) {
    this.light = light;
    this.field = field;
    this.across = new AcrossScale(light.rows().stream().map(RowLight::row).toList(), PLOT);
    double most =
        light.rows().stream()
            .mapToDouble(row -> Math.max(row.relativeAbsorbed(), row.relativeIncident()))
            .max()
            .orElse(1);
    this.top = TICK * Math.ceil(Math.max(1.2, most + 0.01) / TICK);
  }

  Scene make() {
    String title = "Light by row: " + field;
    List<Mark> bars = new ArrayList<>();
    List<Mark> dots = new ArrayList<>();
    List<Mark> canopies = new ArrayList<>();
    for (RowLight row : light.rows()) {
      bars.add(bar(row));
      dots.add(dot(row));
      canopies.add(canopy(row.row()));
    }
    return new Scene(
        title,
        "Absorbed and incident light of each row of one period, relative to a wide block",
        List.of(
            new Scene.Layer("grid", grid()),
            new Scene.Layer("absorbed", bars),
            new Scene.Layer("incident", dots),
            new Scene.Layer("canopies", canopies),
            new Scene.Layer("strips", across.strips()),
            new Scene.Layer("texts", texts(title))));
  }

  private double y(double value) {
    return PLOT.bottom() - value / top * PLOT.height();
  }

  private Mark bar(RowLight row) {
    double pad = (across.right(row.row()) - across.left(row.row())) * (1 - CANOPY) / 2;
    Box box =
        new Box(
            across.left(row.row()) + pad,
            y(row.relativeAbsorbed()),
            across.right(row.row()) - pad,
            PLOT.bottom());
    return Mark.Area.plain(Outline.of(box), fill(row.row()));
  }

  private int fill(CanopyRow row) {
    return Palette.fill(across.crops().getOrDefault(row.crop(), 0), Zone.Kind.BORDER);
  }

  private Mark dot(RowLight row) {
    double half = Math.min(5, (across.right(row.row()) - across.left(row.row())) * 0.4);
    double y = y(row.relativeIncident());
    double x = across.centre(row.row());
    return new Mark.Line(Outline.line(x - half, y, x + half, y), Scene.INK, 2, 0);
  }

  /** The grown canopy, at the scale of the chart's width unless it would not fit. */
  private Mark canopy(CanopyRow row) {
    CanopyTraits canopy = row.canopy();
    double height = canopy == null ? 0 : canopy.heightMetres();
    double tallest =
        light.rows().stream()
            .map(RowLight::row)
            .map(CanopyRow::canopy)
            .mapToDouble(one -> one == null ? 0 : one.heightMetres())
            .max()
            .orElse(1);
    double scale = Math.min(across.pointsPerMetre(), SECTION.height() / tallest);
    double pad = (across.right(row) - across.left(row)) * (1 - CANOPY) / 2;
    Box box =
        new Box(
            across.left(row) + pad,
            SECTION.bottom() - height * scale,
            across.right(row) - pad,
            SECTION.bottom());
    return Mark.Area.plain(Outline.of(box), fill(row));
  }

  private List<Mark> grid() {
    List<Mark> marks = new ArrayList<>();
    int ticks = (int) Math.round(top / TICK);
    for (int i = 0; i <= ticks; i++) {
      double y = y(i * TICK);
      boolean one = i * TICK > 0.99 && i * TICK < 1.01;
      marks.add(
          new Mark.Line(
              Outline.line(PLOT.left(), y, PLOT.right(), y),
              one ? Scene.INK : GRID,
              one ? 1 : 0.5,
              one ? 4 : 0));
      marks.add(
          Mark.Text.right(
              String.format(Locale.ROOT, "%.1f", i * TICK), PLOT.left() - 6, y + 3, SMALL));
    }
    marks.add(
        new Mark.Line(
            Outline.line(SECTION.left(), SECTION.bottom(), SECTION.right(), SECTION.bottom()),
            Scene.INK,
            1,
            0));
    return marks;
  }

  private List<Mark> texts(String title) {
    double heading = light.request().headingDegrees();
    return List.of(
        Mark.Text.left(TextWidth.cut(SafeText.of(title), TITLE_WIDTH, 16, true), 28, 40, 16)
            .inBold(),
        Mark.Text.left(
            String.format(
                Locale.ROOT,
                "Season, relative to the same product in a wide block. Bars: absorbed. Short black"
                    + " lines: incident at the height of the canopy. Latitude %.1f.",
                light.request().latitudeDegrees()),
            28,
            58,
            SMALL),
        Mark.Text.left("left: " + Compass.point(heading - 90), PLOT.left(), 76, SMALL),
        Mark.Text.right("right: " + Compass.point(heading + 90), PLOT.right(), 76, SMALL),
        Mark.Text.left(
            "Lower picture: one period of the pattern in cross-section, canopies fully grown.",
            28,
            544,
            SMALL));
  }
}
