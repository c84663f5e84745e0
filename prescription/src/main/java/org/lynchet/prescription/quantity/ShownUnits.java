package org.lynchet.prescription.quantity;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Locale;

/** Prints areas and lengths in the units that go with a plan's rates. */
public enum ShownUnits {
  /** For rates per acre. */
  ACRES_AND_FEET,
  /** For all other rates. */
  METRIC;

  /** Below this an area in acres gets four decimals, 0.4 m2 each, in place of two. */
  private static final double SMALL_ACRES = 0.1;

  /** From this on an area is shown in hectares. */
  private static final double HECTARE = 10_000;

  /** The units that go with rates per some area. */
  public static ShownUnits beside(AreaUnit per) {
    return per == AreaUnit.ACRE ? ACRES_AND_FEET : METRIC;
  }

  /** An area as text, such as {@code 0.10 ac}, {@code 406 m2} or {@code 0.35 m2}. */
  public String area(double squareMetres) {
    if (this == METRIC) {
      double size = Math.abs(squareMetres);
      return size < HECTARE
          ? text(size < 10 ? 2 : 0, squareMetres, AreaUnit.SQUARE_METRE.symbol())
          : text(2, squareMetres / HECTARE, AreaUnit.HECTARE.symbol());
    }
    double acres = squareMetres / AreaUnit.ACRE.squareMetres();
    return text(Math.abs(acres) < SMALL_ACRES ? 4 : 2, acres, AreaUnit.ACRE.symbol());
  }

  /** A length as text with two decimals, such as {@code 30.00 ft}. */
  public String length(double metres) {
    LengthUnit unit = this == METRIC ? LengthUnit.METRE : LengthUnit.FOOT;
    return text(2, metres / unit.metres(), unit.symbol());
  }

  /**
   * A length as it is written where that is in these units, else in them: feet from two feet on and
   * inches below, or metres from one on, centimetres, and millimetres below ten.
   */
  public String written(Length length) {
    if (isOfThese(length.unit())) {
      return shortest("%.2f", length.amount(), length.unit());
    }
    double metres = length.metres();
    if (this == ACRES_AND_FEET) {
      boolean near = Math.abs(metres) < 2 * LengthUnit.FOOT.metres();
      LengthUnit unit = near ? LengthUnit.INCH : LengthUnit.FOOT;
      return shortest(near ? "%.1f" : "%.2f", metres / unit.metres(), unit);
    }
    if (Math.abs(metres) >= 1) {
      return shortest("%.2f", metres, LengthUnit.METRE);
    }
    LengthUnit unit = Math.abs(metres) < 0.1 ? LengthUnit.MILLIMETRE : LengthUnit.CENTIMETRE;
    return shortest("%.1f", metres / unit.metres(), unit);
  }

  private boolean isOfThese(LengthUnit unit) {
    boolean isFeet = unit == LengthUnit.FOOT || unit == LengthUnit.INCH;
    return isFeet == (this == ACRES_AND_FEET);
  }

  /** A speed as it is written where that is in these units, else in them. */
  public String written(Speed speed) {
    SpeedUnit unit =
        this == ACRES_AND_FEET ? SpeedUnit.MILE_PER_HOUR : SpeedUnit.KILOMETRE_PER_HOUR;
    return speed.unit() == unit
        ? shortest("%.2f", speed.amount(), unit.symbol())
        : shortest("%.1f", speed.metresPerHour() / unit.metresPerHour(), unit.symbol());
  }

  private static String shortest(String form, double value, LengthUnit unit) {
    return shortest(form, value, unit.symbol());
  }

  /** A number without needless decimals, with its unit. */
  private static String shortest(String form, double value, String symbol) {
    return String.format(Locale.ROOT, form, value).replaceAll("\\.?0+$", "") + " " + symbol;
  }

  /** Rounds halves up, as a format string does, and much faster than that. */
  private static String text(int decimals, double value, String symbol) {
    return BigDecimal.valueOf(value).setScale(decimals, RoundingMode.HALF_UP).toPlainString()
        + " "
        + symbol;
  }
}
