package org.lynchet.prescription.picture;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;
import org.locationtech.jts.geom.Coordinate;
import org.lynchet.prescription.light.CanopyRow;
import org.lynchet.prescription.light.Compass;
import org.lynchet.prescription.light.DayShade;

/** Lays out the picture of the shade through the hours of some days, a panel for each. */
final class ShadeChartMaker {
  private static final double LEFT = 60;
  private static final double RIGHT = 764;
  private static final double TOP = 96;
  private static final double BOTTOM = 500;
  private static final double GAP = 22;
  private static final double SMALL = 9;
  private static final double TITLE_WIDTH = 736;
  private static final double HALF_STEP = 1.0 / 12;

  /** From no beam to all of it, a fifth each. */
  private static final int[] LEVELS = {0x1F2A44, 0x4F5F80, 0x8E99AE, 0xCFCBB6, 0xFFF1B8};

  private final List<DayShade> days;
  private final double headingDegrees;
  private final String field;
  private final double firstHour;
  private final double lastHour;

  ShadeChartMaker(List<DayShade> days, double headingDegrees, String field) {
    this.days = days;
    this.headingDegrees = headingDegrees;
    this.field = field;
    this.firstHour =
        Math.floor(days.stream().mapToDouble(day -> day.moments().get(0).hour()).min().orElse(0));
    this.lastHour =
        Math.ceil(
            days.stream()
                .mapToDouble(day -> day.moments().get(day.moments().size() - 1).hour())
                .max()
                .orElse(24));
  }

  Scene make() {
    String title = "Sun and shade by row and hour: " + field;
    List<Scene.Layer> layers = new ArrayList<>();
    double width = (RIGHT - LEFT - (days.size() - 1) * GAP) / days.size();
    for (int i = 0; i < days.size(); i++) {
      double left = LEFT + i * (width + GAP);
      Box box = new Box(left, TOP, left + width, BOTTOM);
      layers.add(new Scene.Layer("day-" + (i + 1), panel(days.get(i), box)));
    }
    layers.add(new Scene.Layer("hours", hours()));
    layers.add(new Scene.Layer("legend", legend()));
    layers.add(new Scene.Layer("texts", texts(title)));
    return new Scene(
        title, "Share of the sun's beam that falls on each row's canopy, through the day", layers);
  }

  private double y(double hour) {
    return TOP + (hour - firstHour) / (lastHour - firstHour) * (BOTTOM - TOP);
  }

  private List<Mark> panel(DayShade day, Box box) {
    AcrossScale across = new AcrossScale(day.rows(), box);
    List<Outline> levels = Stream.generate(Outline::rings).limit(LEVELS.length).toList();
    for (int row = 0; row < day.rows().size(); row++) {
      fill(day, row, across, levels);
    }
    List<Mark> marks = new ArrayList<>();
    for (int level = 0; level < LEVELS.length; level++) {
      if (!levels.get(level).isEmpty()) {
        marks.add(Mark.Area.plain(levels.get(level), LEVELS[level]));
      }
    }
    marks.addAll(across.strips());
    marks.add(new Mark.Line(Outline.of(box), Scene.INK, 0.8, 0));
    marks.add(
        new Mark.Text(
            day.date().toString(), box.centreX(), TOP - 8, 11, true, Mark.Anchor.MIDDLE, false));
    return marks;
  }

  /** Adds a row's hours, those of one level after another as one rectangle. */
  private void fill(DayShade day, int row, AcrossScale across, List<Outline> levels) {
    List<DayShade.Moment> moments = day.moments();
    CanopyRow canopy = day.rows().get(row);
    int first = 0;
    for (int i = 1; i <= moments.size(); i++) {
      int level = level(moments.get(first).beam().get(row));
      if (i == moments.size() || level(moments.get(i).beam().get(row)) != level) {
        double from = y(moments.get(first).hour() - HALF_STEP);
        double to = y(moments.get(i - 1).hour() + HALF_STEP);
        double left = across.left(canopy);
        double right = across.right(canopy);
        levels
            .get(level)
            .add(
                List.of(
                    new Coordinate(left, from),
                    new Coordinate(right, from),
                    new Coordinate(right, to),
                    new Coordinate(left, to)));
        first = i;
      }
    }
  }

  private static int level(double beam) {
    return Math.min(LEVELS.length - 1, (int) (beam * LEVELS.length));
  }

  private List<Mark> hours() {
    List<Mark> marks = new ArrayList<>();
    for (double hour = firstHour; hour <= lastHour; hour += 2) {
      marks.add(
          Mark.Text.right(
              String.format(Locale.ROOT, "%02.0f:00", hour), LEFT - 6, y(hour) + 3, SMALL));
      marks.add(new Mark.Line(Outline.line(LEFT - 4, y(hour), LEFT, y(hour)), Scene.INK, 0.8, 0));
    }
    return marks;
  }

  private List<Mark> legend() {
    List<Mark> marks = new ArrayList<>();
    double y = BOTTOM + 30;
    marks.add(Mark.Text.left("Sun's beam on the row's canopy:", LEFT, y + 10, SMALL));
    for (int i = 0; i < LEVELS.length; i++) {
      double x = LEFT + 160 + i * 92;
      Box box = new Box(x, y, x + 22, y + 13);
      marks.add(Mark.Area.plain(Outline.of(box), LEVELS[i]));
      marks.add(new Mark.Line(Outline.of(box), Scene.INK, 0.5, 0));
      marks.add(
          Mark.Text.left(
              100 * i / LEVELS.length + " to " + 100 * (i + 1) / LEVELS.length + " %",
              x + 27,
              y + 10,
              SMALL));
    }
    return marks;
  }

  private List<Mark> texts(String title) {
    return List.of(
        Mark.Text.left(TextWidth.cut(SafeText.of(title), TITLE_WIDTH, 16, true), 28, 40, 16)
            .inBold(),
        Mark.Text.left(
            "Local mean solar time, down the page; canopies as they stand on the day. Left is "
                + Compass.point(headingDegrees - 90)
                + ", right is "
                + Compass.point(headingDegrees + 90)
                + ".",
            28,
            58,
            SMALL));
  }
}
