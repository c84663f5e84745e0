package org.lynchet.prescription.paper;

import java.util.List;
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

  private SprayRules() {}

  /** The statements, one paragraph each, without products and rates. */
  public static List<String> statements() {
    return List.of(
        "This is no pesticide recommendation: product, rate, nozzles and time are the applicator's.",
        "The label is the law. Its \"must\" and \"do not\" are mandatory; read it for both crops.",
        "Restricted-use products only by, or under the direct supervision of, a certified"
            + " applicator.",
        "Every pass has another crop at its edge. Both crops must tolerate whatever may drift or"
            + " drip onto them; else sections, hoods or shields must keep it off, and the label's"
            + " buffers and wind rules still hold.",
        "Keep to the wind speeds and droplet sizes of the label: often wind under 10 mph, and the"
            + " largest droplets that work. Never spray in an inversion.",
        "Application exclusion zone (40 CFR 170.405): " + exclusionZones(),
        "State and local rules may ask for more: they come first. Setbacks here are the grower's"
            + " distances, not the label's.");
  }

  private static String exclusionZones() {
    return radius(Way.AERIAL, Droplets.COARSE, BOOM_HIGH)
        + " for spraying from the air, by air blast, as fumigant, smoke, mist or fog, and for sprays"
        + " finer than medium; "
        + radius(Way.GROUND_SPRAY, Droplets.MEDIUM, BOOM_HIGH)
        + " for medium or larger droplets from more than 12 in above the ground; "
        + radius(Way.GROUND_SPRAY, Droplets.MEDIUM, BOOM_LOW)
        + " otherwise.";
  }

  private static String radius(Way way, Droplets droplets, double inches) {
    int feet = ExclusionZone.feet(way, droplets, inches);
    return feet == 0 ? "none" : feet + " ft all around";
  }
}
