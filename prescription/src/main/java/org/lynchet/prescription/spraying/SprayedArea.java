package org.lynchet.prescription.spraying;

import java.io.Serializable;
import org.locationtech.jts.geom.Polygon;

/**
 * One connected polygon that one spray pass is there for.
 *
 * @param machine the sprayer's name
 * @param crop the crop
 * @param strip number of the strip; 0 for headland
 * @param pass number of the spray pass; 0 for headland
 * @param firstOpen the first open section; 0 for headland, and if none may be open
 * @param lastOpen the last open section; 0 for headland, and if none may be open
 * @param areaSquareMetres its area in the plane
 * @param polygon longitude (x) and latitude (y) in degrees, rounded to 9 decimals
 */
public record SprayedArea(
    String machine,
    String crop,
    int strip,
    int pass,
    int firstOpen,
    int lastOpen,
    double areaSquareMetres,
    Polygon polygon)
    implements Serializable {
  /** The same area with another polygon. */
  public SprayedArea withPolygon(Polygon other, double otherSquareMetres) {
    return new SprayedArea(
        machine, crop, strip, pass, firstOpen, lastOpen, otherSquareMetres, other);
  }
}
