package org.lynchet.prescription.paper;

import java.util.List;
import java.util.Locale;
import org.lynchet.prescription.quantity.AreaUnit;
import org.lynchet.prescription.quantity.LengthUnit;
import org.lynchet.prescription.setback.ExclusionZone;
import org.lynchet.prescription.setback.ExclusionZone.Droplets;
import org.lynchet.prescription.setback.ExclusionZone.Way;

/**
 * Says what holds for whoever sprays next to another crop.
 *
 * <p>Sources: labels and their words: U. Kentucky (Bessin) and EPA label review training;
 * restricted products: FIFRA section 3 and 12(a)(2)(F), 40 CFR 171; exclusion zone: 40 CFR 170.405;
 * drift: Clemson University's review of label language. That both crops must tolerate the product
 * is common practice, without a source.
 */
public final class SprayRules {
  private static final double BOOM_HIGH = 20;
  private static final double BOOM_LOW = 12;
  private static final int WIND_MILES_PER_HOUR = 10;
  private static final double METRES_PER_MILE = 1609.344;

  private final boolean metric;

  private SprayRules(boolean metric) {
    this.metric = metric;
  }

  /**
   * The statements, one paragraph each, without products and rates.
   *
   * @param unit acres, or else the rules' feet, inches and miles stand in parentheses behind metric
   *     lengths
   */
  public static List<String> statements(AreaUnit unit) {
    return new SprayRules(unit != AreaUnit.ACRE).all();
  }

  private List<String> all() {
    return List.of(
        "This is no pesticide recommendation: product, rate, nozzles and time are the applicator's.",
        "The label is the law. Its \"must\" and \"do not\" are mandatory; read it for both crops.",
        "Restricted-use products only by, or under the direct supervision of, a certified"
            + " applicator.",
        "Every pass has another crop at its edge. Both crops must tolerate whatever may drift or"
            + " drip onto them; else sections, hoods or shields must keep it off, and the label's"
            + " buffers and wind rules still hold.",
        "Keep to the wind speeds and droplet sizes of the label: often wind under "
            + wind()
            + ", and the largest droplets that work. Never spray in an inversion.",
        "Application exclusion zone (40 CFR 170.405): " + exclusionZones(),
        "State and local rules may ask for more: they come first. Setbacks here are the grower's"
            + " distances, not the label's.");
  }

  private String exclusionZones() {
    return radius(Way.AERIAL, Droplets.COARSE, BOOM_HIGH)
        + " for spraying from the air, by air blast, as fumigant, smoke, mist or fog, and for sprays"
        + " finer than medium; "
        + radius(Way.GROUND_SPRAY, Droplets.MEDIUM, BOOM_HIGH)
        + " for medium or larger droplets from more than "
        + height()
        + " above the ground; "
        + radius(Way.GROUND_SPRAY, Droplets.MEDIUM, BOOM_LOW)
        + " otherwise.";
  }

  private String radius(Way way, Droplets droplets, double inches) {
    int feet = ExclusionZone.feet(way, droplets, inches);
    if (feet == 0) {
      return "none";
    }
    String words = feet + " ft";
    return (metric ? up(feet * LengthUnit.FOOT.metres()) + " m (" + words + ")" : words)
        + " all around";
  }

  /** The height is a limit from above, so it is rounded down. */
  private String height() {
    String words = MachineText.number(BOOM_LOW) + " in";
    double centimetres = BOOM_LOW * LengthUnit.INCH.metres() / LengthUnit.CENTIMETRE.metres();
    return metric ? (int) Math.floor(centimetres) + " cm (" + words + ")" : words;
  }

  private String wind() {
    String words = WIND_MILES_PER_HOUR + " mph";
    double kilometres = WIND_MILES_PER_HOUR * METRES_PER_MILE / 1000;
    return metric ? (int) Math.floor(kilometres) + " km/h (" + words + ")" : words;
  }

  /** A distance to keep is rounded up. */
  private static String up(double metres) {
    return String.format(Locale.ROOT, "%.1f", Math.ceil(metres * 10) / 10);
  }
}
