package org.lynchet.prescription.intake;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.geom.util.PolygonExtracter;
import org.lynchet.geometry.coverage.FieldShape;
import org.lynchet.geometry.guidance.OffsetFrame;

/** Takes the polygons out of a geometry in longitude and latitude, and measures them. */
public final class FieldOutline {
  /** The largest extent of a field in metres. */
  public static final double LARGEST_METRES = 20_000;

  /** The highest latitude: within a degree of a pole headings turn too fast. */
  public static final double HIGHEST_LATITUDE = 89;

  /** What a valid area is, as faults say what is allowed. */
  public static final String VALID_AREA = "rings that neither cross nor overlap";

  private static final double METRES_OF_A_DEGREE = Math.PI / 180 * 6_371_008.8;

  private FieldOutline() {}

  /** The polygons of a geometry as one polygon or multipolygon; empty if it has none. */
  public static Geometry polygonsOf(Geometry geometry) {
    List<Polygon> polygons = new ArrayList<>();
    for (Object polygon : PolygonExtracter.getPolygons(geometry)) {
      if (!((Polygon) polygon).isEmpty()) {
        polygons.add((Polygon) polygon);
      }
    }
    return polygons.size() == 1
        ? polygons.get(0)
        : geometry.getFactory().createMultiPolygon(polygons.toArray(new Polygon[0]));
  }

  /**
   * Whether all vertices are places on earth.
   *
   * @param highestLatitude to the north and to the south
   */
  public static boolean isWithin(Geometry geometry, double highestLatitude) {
    for (Coordinate at : geometry.getCoordinates()) {
      if (!(Math.abs(at.x) <= 180 && Math.abs(at.y) <= highestLatitude)) {
        return false;
      }
    }
    return true;
  }

  /** What is wrong with polygons and where; null if they are a valid area. */
  public static @Nullable String problem(Geometry polygons) {
    return AreaRepair.problem(polygons);
  }

  /** How far an area reaches across, about, on a sphere. */
  public static double metresAcross(Geometry area) {
    Envelope box = area.getEnvelopeInternal();
    double middle = Math.toRadians(box.centre().y);
    return METRES_OF_A_DEGREE * Math.max(box.getWidth() * Math.cos(middle), box.getHeight());
  }

  /**
   * The area in the plane.
   *
   * @param area polygons, no farther across than {@link #LARGEST_METRES}
   * @param around the plane is the one around this
   */
  public static double squareMetres(Geometry area, Geometry around) {
    Coordinate at = around.getEnvelopeInternal().centre();
    OffsetFrame frame = OffsetFrame.onHeading(FieldIntake.planeAround(around), at, 0);
    return FieldShape.of(area, frame).areaSquareMetres();
  }
}
