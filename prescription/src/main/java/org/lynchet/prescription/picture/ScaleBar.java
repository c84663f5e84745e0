package org.lynchet.prescription.picture;

import java.util.List;
import java.util.Locale;
import org.lynchet.formats.PlainDecimal;

/**
 * Shows a round length at the map's scale: 1, 2 or 5 times a power of ten.
 *
 * @param amount the length in the unit
 * @param points the same on the page
 */
record ScaleBar(double amount, double points, UnitSystem units) {
  private static final double LONGEST = 170;
  private static final double HEIGHT = 5;
  private static final double SIZE = 9;
  private static final double[] STEPS = {5, 2, 1};

  /** The longest round length that has room. */
  static ScaleBar of(double pointsPerMetre, UnitSystem units) {
    double pointsPerUnit = pointsPerMetre * units.length().metres();
    double power = Math.pow(10, Math.floor(Math.log10(LONGEST / pointsPerUnit)));
    for (double step : STEPS) {
      if (step * power * pointsPerUnit <= LONGEST) {
        return new ScaleBar(step * power, step * power * pointsPerUnit, units);
      }
    }
    return new ScaleBar(power, power * pointsPerUnit, units);
  }

  /** The bar from a left end, its numbers above it. */
  List<Mark> marks(double left, double top) {
    double middle = left + points / 2;
    double right = left + points;
    double barTop = top + SIZE + 2;
    double barBottom = barTop + HEIGHT;
    Box whole = new Box(left, barTop, right, barBottom);
    return List.of(
        Mark.Area.plain(Outline.of(whole), Scene.WHITE),
        Mark.Area.plain(Outline.of(new Box(left, barTop, middle, barBottom)), Scene.INK),
        new Mark.Line(Outline.of(whole), Scene.INK, 0.8, 0),
        number(0, left, top),
        number(amount / 2, middle, top),
        number(amount, right, top),
        Mark.Text.left(
            units.length().symbol(), right + 4 + numberWidth(amount) / 2, top + SIZE - 1, SIZE));
  }

  private static Mark number(double value, double x, double top) {
    return new Mark.Text(text(value), x, top + SIZE - 1, SIZE, false, Mark.Anchor.MIDDLE, false);
  }

  private static double numberWidth(double value) {
    return TextWidth.of(text(value), SIZE, false);
  }

  /** The amount, with thousands apart and no needless decimals. */
  private static String text(double value) {
    return value == Math.rint(value)
        ? String.format(Locale.ROOT, "%,.0f", value)
        : PlainDecimal.of(value);
  }
}
