package org.lynchet.prescription.picture;

import java.util.Locale;
import org.lynchet.prescription.quantity.AreaUnit;
import org.lynchet.prescription.quantity.LengthUnit;
import org.lynchet.prescription.zone.FieldLayout;
import org.lynchet.prescription.zone.Zone;

/** The units of the page: feet and acres if most of the plan's rates are per acre, else metric. */
enum UnitSystem {
  ACRES(AreaUnit.ACRE, LengthUnit.FOOT),
  HECTARES(AreaUnit.HECTARE, LengthUnit.METRE);

  private final AreaUnit area;
  private final LengthUnit length;

  UnitSystem(AreaUnit area, LengthUnit length) {
    this.area = area;
    this.length = length;
  }

  static UnitSystem of(FieldLayout layout) {
    double perAcre =
        layout.zones().stream()
            .filter(zone -> zone.rate().per() == AreaUnit.ACRE)
            .mapToDouble(Zone::areaSquareMetres)
            .sum();
    return perAcre * 2 > layout.areaSquareMetres() ? ACRES : HECTARES;
  }

  LengthUnit length() {
    return length;
  }

  /**
   * An area as text.
   *
   * @param wholeSquareMetres the area of which it is a part; small fields get more decimals
   */
  String area(double squareMetres, double wholeSquareMetres) {
    int decimals = wholeSquareMetres < area.squareMetres() ? 4 : 2;
    return String.format(
        Locale.ROOT, "%,." + decimals + "f %s", squareMetres / area.squareMetres(), area.symbol());
  }

  /** A length as text, in whole units. */
  String length(double metres) {
    return String.format(Locale.ROOT, "%,.0f %s", metres / length.metres(), length.symbol());
  }
}
