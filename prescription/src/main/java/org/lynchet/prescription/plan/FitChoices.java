package org.lynchet.prescription.plan;

import java.io.Serializable;
import org.jspecify.annotations.Nullable;
import org.lynchet.prescription.defaults.Defaults;
import org.lynchet.prescription.quantity.Length;
import org.lynchet.prescription.quantity.LengthUnit;

/**
 * How strip widths are searched.
 *
 * @param toldMaxStripWidth no strip is wider; null if not told
 * @param toldTolerance how far a machine may be off, a pass; null if not told
 */
public record FitChoices(@Nullable Length toldMaxStripWidth, @Nullable Length toldTolerance)
    implements Serializable {

  /** Nothing told: the defaults {@code fit}. */
  public static final FitChoices DEFAULT = new FitChoices(null, null);

  /** No strip is wider; by default where it is not told. */
  public Length maxStripWidth() {
    return toldMaxStripWidth == null
        ? new Length(Defaults.get().number("fit.max-strip-width-feet"), LengthUnit.FOOT)
        : toldMaxStripWidth;
  }

  /** How far a machine may be off, a pass; by default where it is not told. */
  public Length tolerance() {
    return toldTolerance == null
        ? new Length(Defaults.get().number("fit.tolerance-inches"), LengthUnit.INCH)
        : toldTolerance;
  }
}
