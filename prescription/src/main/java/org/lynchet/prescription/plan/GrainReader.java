package org.lynchet.prescription.plan;

import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.lynchet.prescription.defaults.Defaults;
import org.lynchet.prescription.quantity.GrainUnit;
import org.lynchet.prescription.quantity.Shrink;

/**
 * Takes yields of one crop from the moisture and unit in which they are written to those in which
 * the crop is sold.
 *
 * @param crop the crop
 * @param standard the moisture at which it is sold, or null if not known
 * @param handlingLoss share of the weight that is lost in handling
 * @param poundsInABushel what a bushel weighs, or null if not known
 */
record GrainReader(
    String crop, @Nullable Double standard, double handlingLoss, @Nullable Double poundsInABushel) {

  /** A crop whose name could not be read, so that nothing of it is judged. */
  static final GrainReader UNKNOWN = new GrainReader("", 0.0, 0, 1.0);

  /** A crop of whose sale the plan says nothing: the defaults {@code grain}. */
  static GrainReader of(String crop) {
    Defaults defaults = Defaults.get();
    String key = "grain." + defaults.nameOf(crop) + ".";
    return new GrainReader(
        crop,
        defaults.has(key + "standard-moisture")
            ? Double.valueOf(defaults.number(key + "standard-moisture"))
            : null,
        0,
        defaults.has(key + "pounds-in-a-bushel")
            ? Double.valueOf(defaults.number(key + "pounds-in-a-bushel"))
            : null);
  }

  /** The same with what the keys of a crop's market say in place of the defaults. */
  static GrainReader of(String crop, KeyReader market) {
    GrainReader usual = of(crop);
    Double standard =
        market.find("standard-moisture", QuantityText.MOISTURE).orElse(usual.standard);
    double loss = market.find("handling-loss", QuantityText.HANDLING_LOSS).orElse(0.0);
    return new GrainReader(crop, standard, loss, usual.poundsInABushel);
  }

  /**
   * What becomes of grain whose moisture is under the key {@code moisture}; without that key it is
   * as moist as it is sold. Nothing, with a fault, if that is not known.
   */
  Optional<Shrink> shrink(KeyReader keys) {
    Optional<Double> moisture = keys.find("moisture", QuantityText.MOISTURE);
    if (standard != null) {
      return Optional.of(new Shrink(moisture.orElse(standard), standard, handlingLoss));
    }
    if (moisture.isEmpty() && handlingLoss == 0) {
      return Optional.of(new Shrink(0, 0, 0));
    }
    keys.faultOfAll(
        "nothing is known of the moisture at which " + crop + " is sold",
        "moisture and handling-loss of a crop whose standard moisture is known, or with"
            + " standard-moisture",
        "add budget.crops." + crop + ".standard-moisture: 13 %, with what your buyer wants");
    return Optional.empty();
  }

  /** Whether yields in a unit can be taken to the one in which the crop is sold. */
  boolean canTake(GrainUnit from, GrainUnit to) {
    return from == to
        || (from == GrainUnit.POUND && (to == GrainUnit.TONNE || poundsInABushel != null));
  }

  /** How many of one unit on its area are in one of another on its own. */
  double factor(GrainUnit from, GrainUnit to) {
    return from == to ? 1 : weight(from) / weight(to);
  }

  /** Pounds on an acre. */
  private double weight(GrainUnit unit) {
    return unit.poundsOnAnAcre(poundsInABushel == null ? 1 : poundsInABushel);
  }
}
