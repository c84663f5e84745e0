package org.lynchet.integration.endtoend;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.Polygon;
import org.lynchet.integration.witness.ground.GroundLine;
import org.lynchet.integration.witness.ground.GroundTruth;

/**
 * A rectangular field laid out on the ground by geodesics, with an AB line along its left side and
 * two crops in strips of 30 ft.
 *
 * @param a the first corner, and A
 * @param b the corner ahead, and B
 * @param c the corner to the right of B
 * @param d the corner to the right of A
 */
record GroundField(Coordinate a, Coordinate b, Coordinate c, Coordinate d) {
  /** Width of every strip: 12 rows of 30 in and 24 rows of 15 in. */
  static final double STRIP_METRES = 9.144;

  /** Width of the border rows: 2 rows of 30 in. */
  static final double BORDER_METRES = 1.524;

  /** A field of so many metres along and across, seen from A in a direction. */
  static GroundField of(
      double lon, double lat, double headingDegrees, double along, double across) {
    Coordinate a = new Coordinate(lon, lat);
    Coordinate b = GroundTruth.point(a, headingDegrees, along);
    Coordinate c = GroundTruth.point(b, GroundTruth.azimuthDegrees(b, a) - 90, across);
    Coordinate d = GroundTruth.point(a, headingDegrees + 90, across);
    return new GroundField(round(a), round(b), round(c), round(d));
  }

  GroundLine abLine() {
    return GroundLine.through(a, b);
  }

  /** The boundary in longitude and latitude. */
  Polygon polygon() {
    return new GeometryFactory().createPolygon(new Coordinate[] {a, d, c, b, a});
  }

  /** Writes boundary and plan; gives the plan. */
  Path writeInto(Path folder) throws IOException {
    Files.writeString(folder.resolve("field.geojson"), boundary());
    return Files.writeString(folder.resolve("plan.yaml"), plan());
  }

  /** The boundary, counter-clockwise. */
  String boundary() {
    String ring =
        Stream.of(a, d, c, b, a).map(p -> "[" + position(p) + "]").collect(Collectors.joining(","));
    return "{\"type\":\"Polygon\",\"coordinates\":[[" + ring + "]]}";
  }

  /** The plan, which tests of faults break by replacing a piece of it. */
  String plan() {
    return """
        field:
          name: Ground
          boundary: field.geojson
          minimum-piece: 0 m2
        guidance:
          ab-line: {a: [%s], b: [%s]}
          ab-line-is: strip-edge
        machines:
          corn-planter: {kind: planter, rows: 12, row-spacing: 30 in}
          bean-planter: {kind: planter, rows: 24, row-spacing: 15 in}
        strips:
          - crop: corn
            planted-by: corn-planter
            passes: 1
            centre: {product: tall-108, rate: 34000 seeds/ac}
            border: {rows: 2, product: short-106, rate: 36000 seeds/ac}
          - crop: soybean
            planted-by: bean-planter
            passes: 1
            centre: {product: bean-2.4, rate: 140000 seeds/ac}
        """
        .formatted(position(a), position(b));
  }

  private static String position(Coordinate c) {
    return String.format(Locale.ROOT, "%.9f, %.9f", c.x, c.y);
  }

  private static Coordinate round(Coordinate c) {
    return new Coordinate(Math.rint(c.x * 1e9) / 1e9, Math.rint(c.y * 1e9) / 1e9);
  }
}
