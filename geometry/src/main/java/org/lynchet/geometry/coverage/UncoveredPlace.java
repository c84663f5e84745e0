package org.lynchet.geometry.coverage;

import java.io.Serializable;
import org.locationtech.jts.geom.Coordinate;

/**
 * A part of the field that lies in no management zone.
 *
 * @param areaSquareMetres how much
 * @param longitudeDegrees a place in it
 * @param latitudeDegrees a place in it
 */
public record UncoveredPlace(
    double areaSquareMetres, double longitudeDegrees, double latitudeDegrees)
    implements Serializable {

  static UncoveredPlace of(Vertices vertices, int[][] rings) {
    Coordinate inside =
        Rings.polygon(vertices, rings, Rings.Place.OFFSET).getInteriorPoint().getCoordinate();
    Coordinate at = vertices.frame().toLonLat(inside.x, inside.y);
    return new UncoveredPlace(Rings.area(vertices, rings), at.x, at.y);
  }
}
