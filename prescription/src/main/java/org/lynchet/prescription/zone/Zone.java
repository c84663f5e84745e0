package org.lynchet.prescription.zone;

import java.io.Serializable;
import java.util.Locale;
import org.jspecify.annotations.Nullable;
import org.locationtech.jts.geom.Polygon;
import org.lynchet.prescription.quantity.SeedingRate;

/**
 * One connected polygon of the field that gets one product at one rate.
 *
 * @param crop the crop
 * @param strip number of the strip, from 1; 0 for headland
 * @param kind border, centre or headland
 * @param product the hybrid or variety
 * @param rate seeds per area as set on the planter
 * @param managementZone the management zone, or null where there are none
 * @param partial whether it is planted by a pass that is narrower than its machine here
 * @param areaSquareMetres its area in the plane
 * @param polygon longitude (x) and latitude (y) in degrees, rounded to 9 decimals
 */
public record Zone(
    String crop,
    int strip,
    Kind kind,
    String product,
    SeedingRate rate,
    @Nullable String managementZone,
    boolean partial,
    double areaSquareMetres,
    Polygon polygon)
    implements Serializable {

  /** What part of the field a zone is. */
  public enum Kind {
    BORDER,
    CENTRE,
    HEADLAND;

    /** The word for it in files and tables. */
    public String word() {
      return name().toLowerCase(Locale.ROOT);
    }
  }

  /** Seeds that the zone takes. */
  public double seeds() {
    return rate.perSquareMetre() * areaSquareMetres;
  }

  /** The same zone with another polygon. */
  Zone withPolygon(Polygon other, double otherSquareMetres) {
    return new Zone(
        crop, strip, kind, product, rate, managementZone, partial, otherSquareMetres, other);
  }
}
