package org.lynchet.geometry.coverage;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.Set;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.locationtech.jts.algorithm.Orientation;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.LineString;
import org.locationtech.jts.geom.LinearRing;
import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.geom.PrecisionModel;
import org.locationtech.jts.noding.snapround.GeometryNoder;
import org.locationtech.jts.operation.polygonize.Polygonizer;

/** Finds faces of lines that are drawn here, and holds others against the polygonizer of JTS. */
class FaceTracerTest {
  private static final GeometryFactory FACTORY = new GeometryFactory();

  @Test
  void aSquareIsOneFaceWhicheverWayItIsDrawn() {
    assertThat(areas(square(0, 0, 4))).containsExactly(16.0);
    assertThat(areas("0 0, 0 4, 4 4, 4 0, 0 0")).containsExactly(16.0);
  }

  @Test
  void aChainAcrossMakesTwoFaces() {
    assertThat(areas("0 0, 4 0", "4 0, 4 4, 0 4, 0 0", "0 0, 2 1, 4 0")).containsExactly(2.0, 14.0);
  }

  @Test
  void squaresInsideEachOtherAreHolesInTheNextOne() {
    assertThat(areas(square(0, 0, 9), square(1, 1, 7), square(2, 2, 2)))
        .containsExactly(4.0, 32.0, 45.0);
  }

  @Test
  void whatHangsTogetherIsOneHole() {
    assertThat(areas(square(0, 0, 9), "2 2, 4 2", "4 2, 4 4, 2 4, 2 2", "4 2, 3 1, 2 2"))
        .containsExactly(1.0, 4.0, 76.0);
  }

  @Test
  void squaresApartHaveNoHoles() {
    assertThat(areas(square(0, 0, 1), square(5, 0, 2), square(5, 5, 3)))
        .containsExactly(1.0, 4.0, 9.0);
  }

  @Test
  void noChainsHaveNoFaces() {
    assertThat(areas()).isEmpty();
  }

  @Test
  void whatDanglesBoundsNothing() {
    assertThat(areas(square(0, 0, 4), "0 0, 1 1", "1 1, 2 1", "1 1, 2 2")).containsExactly(16.0);
    assertThat(areas(square(0, 0, 4), "1 1, 2 2, 3 1")).containsExactly(16.0);
  }

  @Test
  void aChainWithOneFaceOnBothSidesIsLeftToThePolygonizer() {
    assertThat(faces(List.of(line(square(0, 0, 4)), line(square(8, 0, 4)), line("4 4, 8 4"))))
        .as("bridge")
        .isEmpty();
    Coordinate[] nodes = line("0 0, 4 0, 0 4, 1 1").getCoordinates();
    assertThat(FaceTracer.faces(List.of(new int[] {0, 1, 2, 0}, new int[] {0, 3}), nodes))
        .as("dangling, not left out before")
        .isEmpty();
  }

  @Test
  void squaresThatTouchInAVertexAreLeftToThePolygonizer() {
    assertThat(faces(List.of(line(square(0, 0, 4)), line(square(4, 4, 4))))).isEmpty();
  }

  @Test
  void chainsUponEachOtherAreLeftToThePolygonizer() {
    assertThat(faces(List.of(line(square(0, 0, 4)), line("0 0, 4 0, 4 4")))).isEmpty();
  }

  @Test
  void manyHolesAreLeftToThePolygonizer() {
    List<LineString> lines = new ArrayList<>();
    for (int i = 0; i < 16; i++) {
      lines.add(line(square(2 * i, 0, 1)));
    }
    assertThat(faces(lines)).hasValueSatisfying(faces -> assertThat(faces).hasSize(16));
    lines.add(line(square(-2, 0, 1)));
    assertThat(faces(lines)).isEmpty();
  }

  /** Rings over, in and beside each other: every edge parts two faces, so none are left out. */
  @ParameterizedTest
  @ValueSource(ints = {20, 100, 400})
  void facesOfRingsAreThoseOfThePolygonizer(int extent) {
    Random random = new Random(20270803L + extent);
    int withHoles = 0;
    for (int run = 0; run < 500; run++) {
      List<LineString> rings = new ArrayList<>();
      for (int ring = random.nextInt(10); ring >= 0; ring--) {
        rings.add(starRing(random, extent));
      }
      List<LineString> noded = noded(rings, 1 << 20);
      Optional<List<Polygon>> faces = faces(noded);
      assertThat(faces).as("run %s", run).isPresent();
      assertThat(texts(faces.orElseThrow())).as("run %s", run).isEqualTo(polygonized(noded));
      withHoles += faces.orElseThrow().stream().anyMatch(f -> f.getNumInteriorRing() > 0) ? 1 : 0;
    }
    assertThat(withHoles).isGreaterThan(20);
  }

  /** On a coarse grid much touches, and open lines dangle: what is told must be right. */
  @ParameterizedTest
  @ValueSource(ints = {4, 8, 30})
  void whatIsToldOfAnyLinesIsWhatThePolygonizerTells(int extent) {
    Random random = new Random(20270804L + extent);
    int told = 0;
    for (int run = 0; run < 2000; run++) {
      List<LineString> lines = new ArrayList<>();
      for (int line = random.nextInt(3); line >= 0; line--) {
        lines.add(anyLine(random, extent));
      }
      List<LineString> noded = noded(lines, 1);
      Optional<List<Polygon>> faces = faces(noded);
      if (faces.isPresent()) {
        assertThat(texts(faces.orElseThrow())).as("run %s", run).isEqualTo(polygonized(noded));
        told++;
      }
    }
    assertThat(told).isGreaterThan(100);
  }

  /** The areas of the faces, rising. */
  private static List<Double> areas(String... lines) {
    List<Polygon> faces = faces(Arrays.stream(lines).map(l -> line(l)).toList()).orElseThrow();
    return faces.stream().map(Polygon::getArea).sorted().toList();
  }

  /** The faces of noded lines; outer rings must be counter-clockwise, holes clockwise. */
  private static Optional<List<Polygon>> faces(List<LineString> lines) {
    Map<Coordinate, Integer> vertexAt = new LinkedHashMap<>();
    VertexList ends = new VertexList();
    for (LineString line : lines) {
      Coordinate[] places = line.getCoordinates();
      for (int i = 1; i < places.length; i++) {
        ends.add(vertexAt.computeIfAbsent(places[i - 1], at -> vertexAt.size()));
        ends.add(vertexAt.computeIfAbsent(places[i], at -> vertexAt.size()));
      }
    }
    Coordinate[] nodes = vertexAt.keySet().toArray(new Coordinate[0]);
    List<int[]> chains = new Chains(ends, nodes.length).strung();
    return FaceTracer.faces(chains, nodes)
        .map(faces -> faces.stream().map(face -> polygon(face, nodes)).toList());
  }

  private static Polygon polygon(int[][] face, Coordinate[] nodes) {
    LinearRing[] rings = new LinearRing[face.length];
    for (int r = 0; r < rings.length; r++) {
      Coordinate[] ring = new Coordinate[face[r].length + 1];
      for (int i = 0; i < ring.length; i++) {
        ring[i] = nodes[face[r][i % face[r].length]];
      }
      assertThat(Orientation.isCCW(ring)).isEqualTo(r == 0);
      rings[r] = FACTORY.createLinearRing(ring);
    }
    return FACTORY.createPolygon(rings[0], Arrays.copyOfRange(rings, 1, rings.length));
  }

  private static Set<String> polygonized(List<LineString> lines) {
    Polygonizer polygonizer = new Polygonizer();
    polygonizer.add(lines);
    List<Polygon> polygons = new ArrayList<>();
    for (Object polygon : polygonizer.getPolygons()) {
      polygons.add((Polygon) polygon);
    }
    return texts(polygons);
  }

  /** Polygons whichever vertex they begin at. */
  private static Set<String> texts(List<Polygon> polygons) {
    Set<String> texts = new TreeSet<>();
    polygons.forEach(polygon -> texts.add(polygon.norm().toText()));
    assertThat(texts).hasSameSizeAs(polygons);
    return texts;
  }

  /** Lines noded on a grid; what several have in common comes once. */
  private static List<LineString> noded(List<LineString> lines, int stepsPerUnit) {
    List<LineString> noded = new ArrayList<>();
    for (Object line : new GeometryNoder(new PrecisionModel(stepsPerUnit)).node(lines)) {
      noded.add((LineString) line);
    }
    return noded;
  }

  /** A square by its lower left corner, counter-clockwise. */
  private static String square(int x, int y, int side) {
    int right = x + side;
    int top = y + side;
    return "%d %d, %d %d, %d %d, %d %d, %d %d".formatted(x, y, right, y, right, top, x, top, x, y);
  }

  private static LineString line(String places) {
    return FACTORY.createLineString(
        Arrays.stream(places.split(", "))
            .map(place -> place.split(" "))
            .map(xy -> new Coordinate(Double.parseDouble(xy[0]), Double.parseDouble(xy[1])))
            .toArray(Coordinate[]::new));
  }

  /** A ring around a place; small ones are the most frequent. */
  private static LineString starRing(Random random, int extent) {
    double x = extent * random.nextDouble();
    double y = extent * random.nextDouble();
    double size = 1 + 50 * Math.pow(random.nextDouble(), 3);
    Coordinate[] ring = new Coordinate[4 + random.nextInt(9)];
    for (int i = 0; i < ring.length - 1; i++) {
      double angle = 2 * Math.PI * i / (ring.length - 1);
      double radius = size * (0.5 + 0.5 * random.nextDouble());
      ring[i] = new Coordinate(x + radius * Math.cos(angle), y + radius * Math.sin(angle));
    }
    ring[ring.length - 1] = ring[0];
    return FACTORY.createLineString(ring);
  }

  /** Three in four of them closed. */
  private static LineString anyLine(Random random, int extent) {
    Coordinate[] line = new Coordinate[3 + random.nextInt(4)];
    for (int i = 0; i < line.length; i++) {
      line[i] = new Coordinate(random.nextInt(extent), random.nextInt(extent));
    }
    if (random.nextInt(4) > 0) {
      line[line.length - 1] = line[0];
    }
    return FACTORY.createLineString(line);
  }
}
