package org.lynchet.prescription.plan;

import java.io.Serializable;
import org.lynchet.prescription.defaults.Defaults;
import org.lynchet.prescription.quantity.Length;
import org.lynchet.prescription.quantity.LengthUnit;

/**
 * How strip widths are searched.
 *
 * @param maxStripWidth no strip is wider
 * @param tolerance how far a machine may be off, a pass
 */
public record FitChoices(Length maxStripWidth, Length tolerance) implements Serializable {

  /** The defaults {@code fit}. */
  public static final FitChoices DEFAULT =
      new FitChoices(
          new Length(Defaults.get().number("fit.max-strip-width-feet"), LengthUnit.FOOT),
          new Length(Defaults.get().number("fit.tolerance-inches"), LengthUnit.INCH));
}
