package org.lynchet.geometry.coverage;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Objects;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.Point;
import org.locationtech.jts.operation.distance.IndexedFacetDistance;

/** Holds nearest places against the index of JTS. */
class NearestEdgeTest {

  @Test
  void nearestPlacesAreThoseOfTheLibrary() {
    Random random = new Random(20270611);
    for (int i = 0; i < 200; i++) {
      Geometry boundary = RandomFields.any(random).getBoundary();
      NearestEdge nearest = new NearestEdge(boundary);
      IndexedFacetDistance expected = new IndexedFacetDistance(boundary);
      for (int k = 0; k < 50; k++) {
        Point at = place(random);
        double distance = expected.distance(at);
        Coordinate found = nearest.to(at.getCoordinate(), distance + 1);
        assertThat(Objects.requireNonNull(found).distance(at.getCoordinate()))
            .isCloseTo(distance, within(1e-9));
        assertThat(nearest.distance(at.getCoordinate(), distance + 1))
            .isCloseTo(distance, within(1e-9));
        assertThat(boundary.distance(Rings.FACTORY.createPoint(found))).isCloseTo(0, within(1e-9));
      }
    }
  }

  @Test
  void nothingIsFoundBeyondReach() {
    Random random = new Random(20270612);
    for (int i = 0; i < 200; i++) {
      Geometry boundary = RandomFields.any(random).getBoundary();
      NearestEdge nearest = new NearestEdge(boundary);
      Point at = place(random);
      double distance = boundary.distance(at);
      assertThat(nearest.to(at.getCoordinate(), distance - 1e-6)).isNull();
      assertThat(nearest.to(at.getCoordinate(), distance + 1e-6)).isNotNull();
      assertThat(nearest.distance(at.getCoordinate(), distance - 1e-6)).isInfinite();
    }
  }

  private static Point place(Random random) {
    return Rings.FACTORY.createPoint(
        new Coordinate(800 * random.nextDouble() - 400, 800 * random.nextDouble() - 400));
  }
}
