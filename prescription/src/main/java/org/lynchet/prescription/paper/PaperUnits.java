package org.lynchet.prescription.paper;

import java.util.Locale;
import org.lynchet.prescription.quantity.AreaUnit;
import org.lynchet.prescription.quantity.LengthUnit;
import org.lynchet.prescription.summary.Summary;

/** Shows areas and amounts in the units of the plan: acres and feet, or hectares and metres. */
final class PaperUnits {
  private PaperUnits() {}

  static LengthUnit length(Summary summary) {
    return summary.areaUnit() == AreaUnit.ACRE ? LengthUnit.FOOT : LengthUnit.METRE;
  }

  /** Such as {@code 21.34 ac}. */
  static String area(double squareMetres, Summary summary) {
    AreaUnit unit = summary.areaUnit();
    return String.format(
        Locale.ROOT, "%,.2f %s", squareMetres / unit.squareMetres(), unit.symbol());
  }

  /** Such as {@code 725,560 seeds}. */
  static String seeds(double seeds) {
    return String.format(Locale.ROOT, "%,.0f seeds", seeds);
  }
}
