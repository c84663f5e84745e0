package org.lynchet.geometry.coverage;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Random;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Assume;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.ShrinkingMode;
import org.locationtech.jts.algorithm.Angle;
import org.locationtech.jts.densify.Densifier;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.LineSegment;
import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.geom.prep.PreparedGeometry;
import org.locationtech.jts.geom.prep.PreparedGeometryFactory;
import org.locationtech.jts.operation.distance.IndexedFacetDistance;

/**
 * Laws of a headland that lies only where rows end, over fields drawn by chance. Rows run along y,
 * and edges steeper than 30 degrees to them are ends.
 */
class EndHeadlandPropertyTest {
  /** How exact the inner edge is said to be, in metres. */
  private static final double EXACT = 0.01;

  /**
   * How far from the end of a run, in widths, its inner edge may go on or end along a row: two
   * along it and one across, or a row of 1 / sin 30 degrees.
   */
  private static final double AT_TIPS = 4;

  private static final double ANGLE = Math.toRadians(30);

  @Provide
  Arbitrary<Long> seeds() {
    return Arbitraries.longs();
  }

  /**
   * A field whose edges are all long and clearly ends or sides, so that nothing is simplified or
   * bridged.
   */
  @Property(seed = "1", tries = 150, shrinking = ShrinkingMode.OFF, maxDiscardRatio = 100)
  void longEdges(@ForAll("seeds") long seed) {
    Random random = new Random(seed);
    double width = 2 + 18 * random.nextDouble();
    Polygon drawn = RandomFields.star(random, 0, 0, 400, 3 + random.nextInt(9));
    List<LineSegment> edges = edges(drawn);
    Assume.that(edges.stream().allMatch(edge -> isPlain(edge, width)));
    Assume.that(cornersAreClear(drawn.getCoordinates()));
    TestField field = TestField.of(drawn).endHeadland(width, true);
    PreparedGeometry inside = PreparedGeometryFactory.prepare(Insides.of(field.regions()));
    List<LineSegment> ends = edges.stream().filter(edge -> toRows(edge) > ANGLE).toList();
    for (int i = 0; i < 3000; i++) {
      Coordinate at = place(random, drawn);
      double toTip =
          ends.stream()
              .mapToDouble(end -> Math.min(end.p0.distance(at), end.p1.distance(at)))
              .min()
              .orElse(Double.POSITIVE_INFINITY);
      double toEnd = distance(at, ends);
      if (toTip > AT_TIPS * width && toEnd > width + EXACT) {
        assertThat(inside.covers(drawn.getFactory().createPoint(at)))
            .as("%s, no end near, is inside", at)
            .isTrue();
      }
      boolean endIsNearest = toEnd <= distance(at, edges);
      if (toTip > AT_TIPS * width && endIsNearest && toEnd < width - EXACT) {
        assertThat(inside.covers(drawn.getFactory().createPoint(at)))
            .as("%s, %s m from an end, is inside", at, toEnd)
            .isFalse();
      }
    }
  }

  /**
   * Any field: headland ends no deeper than along a row at 30 degrees to its run, 2 widths, and is
   * not far from an end.
   */
  @Property(seed = "2", tries = 100, shrinking = ShrinkingMode.OFF)
  void nearAnEnd(@ForAll("seeds") long seed) {
    Random random = new Random(seed);
    double width = 2 + 30 * random.nextDouble();
    Geometry drawn = RandomFields.any(random);
    TestField field = TestField.of(drawn).endHeadland(width, true);
    Geometry inside = Insides.of(field.regions());
    IndexedFacetDistance boundary = new IndexedFacetDistance(field.inMetres().getBoundary());
    List<LineSegment> ends = edges(drawn).stream().filter(edge -> toRows(edge) > ANGLE).toList();
    for (Coordinate at : Densifier.densify(inside, 2).getCoordinates()) {
      double deep = boundary.distance(drawn.getFactory().createPoint(at));
      assertThat(deep).as("deep at %s, headland of %s m", at, width).isLessThan(2 * width + EXACT);
      if (deep > EXACT) {
        assertThat(distance(at, ends)).as("from an end at %s", at).isLessThan(AT_TIPS * width);
      }
    }
  }

  /** A mast or a tree, whatever its shape, carries headland all around. */
  @Property(seed = "3", tries = 200, shrinking = ShrinkingMode.OFF)
  void aroundWhatIsSmall(@ForAll("seeds") long seed) {
    Random random = new Random(seed);
    double width = 5 + 15 * random.nextDouble();
    double radius = width * (0.02 + 0.3 * random.nextDouble());
    Polygon hole = RandomFields.star(random, 100, 100, radius, 4 + random.nextInt(12));
    Assume.that(hole.getEnvelopeInternal().getDiameter() < width);
    Geometry square = TestField.read("POLYGON ((0 0, 200 0, 200 200, 0 200, 0 0))");
    TestField field = TestField.of(square.difference(hole)).endHeadland(width, true);

    Geometry around = TestField.read("POLYGON ((40 40, 160 40, 160 160, 40 160, 40 40))");
    Geometry headland = around.difference(Insides.of(field.regions()));

    IndexedFacetDistance toHole = new IndexedFacetDistance(hole);
    Coordinate[] edge = Densifier.densify(headland, 0.5).getCoordinates();
    assertThat(edge).as("headland of %s m around %s", width, hole).isNotEmpty();
    assertThat(Arrays.stream(edge).map(at -> toHole.distance(hole.getFactory().createPoint(at))))
        .allSatisfy(far -> assertThat(far).isCloseTo(width, within(EXACT)));
  }

  private static boolean isPlain(LineSegment edge, double width) {
    return edge.getLength() > 3 * width && Math.abs(toRows(edge) - ANGLE) > Math.toRadians(3);
  }

  private static boolean cornersAreClear(Coordinate[] ring) {
    for (int i = 0; i < ring.length - 1; i++) {
      Coordinate before = ring[i == 0 ? ring.length - 2 : i - 1];
      double turn = Math.PI - Angle.angleBetween(before, ring[i], ring[i + 1]);
      if (turn < Math.toRadians(15)) {
        return false;
      }
    }
    return true;
  }

  /** The angle between an edge and the rows, at most a right angle. */
  private static double toRows(LineSegment edge) {
    return Math.atan2(Math.abs(edge.p1.x - edge.p0.x), Math.abs(edge.p1.y - edge.p0.y));
  }

  private static double distance(Coordinate at, List<LineSegment> edges) {
    return edges.stream()
        .mapToDouble(edge -> edge.distance(at))
        .min()
        .orElse(Double.POSITIVE_INFINITY);
  }

  private static Coordinate place(Random random, Polygon field) {
    PreparedGeometry whole = PreparedGeometryFactory.prepare(field);
    while (true) {
      Coordinate at =
          new Coordinate(
              field.getEnvelopeInternal().getMinX()
                  + random.nextDouble() * field.getEnvelopeInternal().getWidth(),
              field.getEnvelopeInternal().getMinY()
                  + random.nextDouble() * field.getEnvelopeInternal().getHeight());
      if (whole.contains(field.getFactory().createPoint(at))) {
        return at;
      }
    }
  }

  private static List<LineSegment> edges(Geometry area) {
    List<LineSegment> edges = new ArrayList<>();
    Geometry rings = area.getBoundary();
    for (int i = 0; i < rings.getNumGeometries(); i++) {
      Coordinate[] at = rings.getGeometryN(i).getCoordinates();
      for (int e = 1; e < at.length; e++) {
        edges.add(new LineSegment(at[e - 1], at[e]));
      }
    }
    return edges;
  }
}
