package org.lynchet.prescription.plan;

import java.io.Serializable;
import org.lynchet.prescription.quantity.Length;
import org.lynchet.prescription.quantity.LengthUnit;

/**
 * How strip widths are searched.
 *
 * @param maxStripWidth no strip is wider
 * @param tolerance how far a machine may be off, a pass
 */
public record FitChoices(Length maxStripWidth, Length tolerance) implements Serializable {

  /** At most 120 ft, and 2 in a pass. */
  public static final FitChoices DEFAULT =
      new FitChoices(new Length(120, LengthUnit.FOOT), new Length(2, LengthUnit.INCH));
}
