package org.lynchet.prescription.picture;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.lynchet.prescription.budget.StripBudget;
import org.lynchet.prescription.budget.Swing;
import org.lynchet.prescription.quantity.Spread;
import org.lynchet.prescription.zone.Zone;

/** Lays out the chart of what matters most in a budget. */
final class SwingChartMaker {
  private static final double NAMES = 28;
  private static final double NAMES_WIDTH = 160;
  private static final double LEFT = 290;
  private static final double RIGHT = 670;
  private static final double TOP = 96;
  private static final double BOTTOM = 530;
  private static final double HIGHEST_ROW = 44;

  /** The height of a bar as a share of its row. */
  private static final double BAR = 0.56;

  private static final double SMALL = 9;
  private static final double TITLE_WIDTH = 736;
  private static final int GRID = 0xC8C8C8;
  private static final int ALL = 0x8C8C8C;
  private static final int AT_LOW = Palette.fill(0, Zone.Kind.BORDER);
  private static final int AT_HIGH = Palette.fill(1, Zone.Kind.CENTRE);

  /** Room beyond the widest bar as a share of what the chart shows; also keeps the scale from 0. */
  private static final double ROOM = 0.04;

  private final StripBudget budget;
  private final String field;
  private final List<Swing> swings;
  private final double rowHeight;
  private final MoneyScale scale;

  SwingChartMaker(StripBudget budget, String field) {
    this.budget = budget;
    this.field = field;
    this.swings = budget.swings().stream().filter(swing -> swing.width() > 0).toList();
    this.rowHeight = Math.min(HIGHEST_ROW, (BOTTOM - TOP) / (swings.size() + 1));
    Spread net = budget.net();
    double least = Math.min(0, net.low());
    double most = Math.max(0, net.high());
    double room = Math.max(1, ROOM * (most - least));
    this.scale = new MoneyScale(least - room, most + room, LEFT, RIGHT);
  }

  Scene make() {
    String title = "What matters most: " + field;
    List<Mark> bars = new ArrayList<>();
    for (int i = 0; i < swings.size(); i++) {
      bars.addAll(row(i, swings.get(i)));
    }
    bars.addAll(all());
    return new Scene(
        title,
        "Net of strips against blocks at the low and the high value of each uncertain number",
        List.of(
            new Scene.Layer("grid", grid()),
            new Scene.Layer("bars", bars),
            new Scene.Layer("net", List.of(zero(), typical())),
            new Scene.Layer("texts", texts(title))));
  }

  private double foot() {
    return TOP + (swings.size() + 1) * rowHeight;
  }

  private double middle(int row) {
    return TOP + (row + 0.5) * rowHeight;
  }

  private List<Mark> row(int row, Swing swing) {
    double typical = budget.net().typical();
    boolean lowIsLeft = swing.netAtLow() <= swing.netAtHigh();
    String low = swing.words(swing.counted().low());
    String high = swing.words(swing.counted().high());
    double left = scale.x(Math.min(swing.netAtLow(), swing.netAtHigh()));
    double right = scale.x(Math.max(swing.netAtLow(), swing.netAtHigh()));
    double baseline = middle(row) + SMALL * TextWidth.DIGIT_HEIGHT / 2;
    return List.of(
        bar(row, scale.x(swing.netAtLow()), scale.x(typical), AT_LOW),
        bar(row, scale.x(typical), scale.x(swing.netAtHigh()), AT_HIGH),
        name(row, swing.input().words()),
        Mark.Text.right(lowIsLeft ? low : high, left - 4, baseline, SMALL),
        Mark.Text.left(lowIsLeft ? high : low, right + 4, baseline, SMALL));
  }

  private List<Mark> all() {
    int row = swings.size();
    Spread net = budget.net();
    double baseline = middle(row) + SMALL * TextWidth.DIGIT_HEIGHT / 2;
    return List.of(
        bar(row, scale.x(net.low()), scale.x(net.high()), ALL),
        name(row, "all of them together"),
        Mark.Text.right(money(net.low()), scale.x(net.low()) - 4, baseline, SMALL),
        Mark.Text.left(money(net.high()), scale.x(net.high()) + 4, baseline, SMALL));
  }

  private Mark bar(int row, double from, double to, int colour) {
    double half = rowHeight * BAR / 2;
    Box box =
        new Box(Math.min(from, to), middle(row) - half, Math.max(from, to), middle(row) + half);
    return Mark.Area.plain(Outline.of(box), colour);
  }

  private Mark name(int row, String words) {
    String cut = TextWidth.cut(SafeText.of(words), NAMES_WIDTH, SMALL, false);
    return Mark.Text.left(cut, NAMES, middle(row) + SMALL * TextWidth.DIGIT_HEIGHT / 2, SMALL);
  }

  private List<Mark> grid() {
    List<Mark> marks = new ArrayList<>();
    for (double tick : scale.ticks()) {
      double x = scale.x(tick);
      marks.add(new Mark.Line(Outline.line(x, TOP, x, foot()), GRID, 0.5, 0));
      marks.add(
          new Mark.Text(money(tick), x, foot() + 14, SMALL, false, Mark.Anchor.MIDDLE, false));
    }
    return marks;
  }

  private Mark zero() {
    double x = scale.x(0);
    return new Mark.Line(Outline.line(x, TOP, x, foot()), Scene.INK, 1, 4);
  }

  private Mark typical() {
    double x = scale.x(budget.net().typical());
    return new Mark.Line(Outline.line(x, TOP, x, foot()), Scene.INK, 1.5, 0);
  }

  private List<Mark> texts(String title) {
    List<Mark> marks = new ArrayList<>();
    marks.add(
        Mark.Text.left(TextWidth.cut(SafeText.of(title), TITLE_WIDTH, 16, true), NAMES, 40, 16)
            .inBold());
    String currency = TextWidth.cut(SafeText.of(budget.facts().currency()), 60, SMALL, false);
    marks.add(
        Mark.Text.left(
            "Net of strips against separate blocks, "
                + currency
                + " for the whole field; typically "
                + money(budget.net().typical())
                + " (line). Left of 0 strips lose.",
            NAMES,
            58,
            SMALL));
    double y = 66;
    double x = NAMES;
    for (String side : List.of("at the low value", "at the high value")) {
      Box box = new Box(x, y, x + 14, y + 10);
      boolean low = side.endsWith("low value");
      marks.add(Mark.Area.plain(Outline.of(box), low ? AT_LOW : AT_HIGH));
      marks.add(Mark.Text.left(side, x + 18, y + 9, SMALL));
      x += 120;
    }
    return marks;
  }

  private static String money(double amount) {
    double whole = Math.rint(amount) + 0.0;
    return String.format(Locale.ROOT, whole == 0 ? "%,.0f" : "%+,.0f", whole);
  }
}
