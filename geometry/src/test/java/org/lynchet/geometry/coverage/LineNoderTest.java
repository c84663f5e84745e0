package org.lynchet.geometry.coverage;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import java.util.Set;
import java.util.TreeSet;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.PrecisionModel;
import org.locationtech.jts.noding.NodedSegmentString;
import org.locationtech.jts.noding.SegmentString;
import org.locationtech.jts.noding.snapround.SnapRoundingNoder;

/** Holds noding of what may touch against the noder of JTS that gets everything. */
class LineNoderTest {

  /** Few lines on a wide plane, many of them alone, and many on a narrow one. */
  @ParameterizedTest
  @ValueSource(ints = {8, 60, 1000})
  void edgesAreThoseOfNodingAll(int extent) {
    Random random = new Random(20270504L + extent);
    for (int i = 0; i < 1000; i++) {
      List<Coordinate[]> lines = new ArrayList<>();
      for (int line = random.nextInt(4); line >= 0; line--) {
        lines.add(line(random, extent));
      }
      assertEdgesAreThoseOfNodingAll(lines, "extent %s, run %s".formatted(extent, i));
    }
  }

  /** Triangles with edges and vertices in common, as neighbouring management zones have them. */
  @ParameterizedTest
  @ValueSource(ints = {8, 60, 1000, 100_000})
  void sharedEdgesAreDividedAlike(int extent) {
    Random random = new Random(20270611L + extent);
    for (int i = 0; i < 1000; i++) {
      Coordinate[] corners = new Coordinate[5];
      for (int c = 0; c < corners.length; c++) {
        corners[c] = new Coordinate(random.nextInt(extent), random.nextInt(extent));
      }
      List<Coordinate[]> lines = new ArrayList<>();
      for (int line = 1 + random.nextInt(3); line >= 0; line--) {
        List<Coordinate> order = new ArrayList<>(List.of(corners));
        Collections.shuffle(order, random);
        lines.add(new Coordinate[] {order.get(0), order.get(1), order.get(2), order.get(0).copy()});
      }
      assertEdgesAreThoseOfNodingAll(lines, "extent %s, run %s".formatted(extent, i));
    }
  }

  private static void assertEdgesAreThoseOfNodingAll(List<Coordinate[]> lines, String run) {
    PrecisionModel grid = new PrecisionModel(1);
    SnapRoundingNoder all = new SnapRoundingNoder(grid);
    all.computeNodes(strings(lines));
    List<SegmentString> expected = new ArrayList<>();
    for (Object noded : all.getNodedSubstrings()) {
      expected.add((SegmentString) noded);
    }
    assertThat(edges(new LineNoder(grid).noded(strings(lines)))).as(run).isEqualTo(edges(expected));
  }

  private static List<SegmentString> strings(List<Coordinate[]> lines) {
    List<SegmentString> strings = new ArrayList<>();
    for (int i = 0; i < lines.size(); i++) {
      strings.add(new NodedSegmentString(lines.get(i).clone(), i));
    }
    return strings;
  }

  /** Half of them closed. */
  private static Coordinate[] line(Random random, int extent) {
    Coordinate[] line = new Coordinate[3 + random.nextInt(6)];
    for (int i = 0; i < line.length; i++) {
      line[i] = new Coordinate(extent * random.nextDouble(), extent * random.nextDouble());
    }
    if (random.nextBoolean()) {
      line[line.length - 1] = new Coordinate(line[0]);
    }
    return line;
  }

  /** The edges of lines with the number of the line that they come from. */
  private static Set<String> edges(List<SegmentString> lines) {
    Set<String> edges = new TreeSet<>();
    for (SegmentString line : lines) {
      for (int i = 1; i < line.size(); i++) {
        Coordinate from = line.getCoordinate(i - 1);
        Coordinate to = line.getCoordinate(i);
        if (!from.equals2D(to)) {
          edges.add(from.x + " " + from.y + " to " + to.x + " " + to.y + " of " + line.getData());
        }
      }
    }
    return edges;
  }
}
