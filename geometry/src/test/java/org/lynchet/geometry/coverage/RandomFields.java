package org.lynchet.geometry.coverage;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Random;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.LinearRing;
import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.triangulate.VoronoiDiagramBuilder;

/** Draws fields by chance, in metres, some hundred metres across. */
final class RandomFields {
  private static final GeometryFactory FACTORY = new GeometryFactory();

  private RandomFields() {}

  /** Any of the shapes below but those on a grid. */
  static Geometry any(Random random) {
    return switch (random.nextInt(4)) {
      case 0 -> star(random, 0, 0, 300, 4 + random.nextInt(40));
      case 1 -> holed(random);
      case 2 -> comb(random);
      default -> star(random, 0, 0, 300, 200 + random.nextInt(400));
    };
  }

  /** A polygon that a place in it sees whole; jagged and concave. */
  static Polygon star(Random random, double x, double y, double radius, int size) {
    return FACTORY.createPolygon(starRing(random, x, y, radius, size));
  }

  private static LinearRing starRing(Random random, double x, double y, double radius, int size) {
    Coordinate[] ring = new Coordinate[size + 1];
    for (int i = 0; i < size; i++) {
      double angle = 2 * Math.PI * (i + 0.8 * random.nextDouble()) / size;
      double r = radius * (0.3 + 0.7 * random.nextDouble());
      ring[i] = new Coordinate(x + r * Math.cos(angle), y + r * Math.sin(angle));
    }
    ring[size] = ring[0].copy();
    return FACTORY.createLinearRing(ring);
  }

  /** A disc with a jagged edge of many vertices, as outlines from rasters and drives are. */
  static Polygon jagged(Random random, double radius, int size) {
    return jagged(random, radius, size, 2);
  }

  /** The same with jags of up to so many metres. */
  static Polygon jagged(Random random, double radius, int size, double jag) {
    Coordinate[] ring = new Coordinate[size + 1];
    for (int i = 0; i < size; i++) {
      double angle = 2 * Math.PI * i / size;
      double r = radius + jag * random.nextDouble() + 40 * Math.sin(5 * angle);
      ring[i] = new Coordinate(r * Math.cos(angle), r * Math.sin(angle));
    }
    ring[size] = ring[0].copy();
    return FACTORY.createPolygon(ring);
  }

  /**
   * A rectangle from (0 0) to (width height), each side of so many edges, jagged inwards but at
   * corners.
   */
  static Polygon jaggedRectangle(
      Random random, double width, double height, int edges, double jag) {
    List<Coordinate> ring = new ArrayList<>();
    for (int side = 0; side < 4; side++) {
      for (int i = 0; i < edges; i++) {
        double t = (double) i / edges;
        double in = t < 0.02 || t > 0.98 ? 0 : jag * random.nextDouble();
        ring.add(
            switch (side) {
              case 0 -> new Coordinate(width * t, in);
              case 1 -> new Coordinate(width - in, height * t);
              case 2 -> new Coordinate(width * (1 - t), height - in);
              default -> new Coordinate(in, height * (1 - t));
            });
      }
    }
    return FACTORY.createPolygon(closed(ring));
  }

  /** A rectangle with star-shaped holes, one in each square of a chessboard at most. */
  static Polygon holed(Random random) {
    int n = 1 + random.nextInt(4);
    double side = 400.0 / n;
    List<LinearRing> holes = new ArrayList<>();
    for (double x = side / 2; x < 400; x += side) {
      for (double y = side / 2; y < 400; y += side) {
        if (random.nextInt(3) > 0) {
          double radius = side * (0.02 + 0.45 * random.nextDouble());
          holes.add(starRing(random, x, y, radius, 3 + random.nextInt(20)));
        }
      }
    }
    Envelope box = new Envelope(-1, 401, -2, 402);
    LinearRing shell = ((Polygon) FACTORY.toGeometry(box)).getExteriorRing();
    return FACTORY.createPolygon(shell, holes.toArray(new LinearRing[0]));
  }

  /** A back with teeth, leaning. */
  static Polygon comb(Random random) {
    int teeth = 2 + random.nextInt(12);
    double lean = 0.2 * (random.nextDouble() - 0.5);
    List<Coordinate> ring = new ArrayList<>();
    double x = 0;
    ring.add(new Coordinate(0, -20 - 30 * random.nextDouble()));
    for (int i = 0; i < teeth; i++) {
      double height = 20 + 300 * random.nextDouble();
      ring.add(new Coordinate(x, 0));
      ring.add(new Coordinate(x + lean * height, height));
      x += 2 + 20 * random.nextDouble();
      ring.add(new Coordinate(x + lean * height, height));
      ring.add(new Coordinate(x, 0));
      x += 2 + 20 * random.nextDouble();
    }
    ring.add(new Coordinate(x, 0));
    ring.add(new Coordinate(x, -20 - 30 * random.nextDouble()));
    Polygon comb = FACTORY.createPolygon(closed(ring));
    return random.nextBoolean() ? comb : turned(comb);
  }

  /**
   * Squares and half squares of a grid of whole metres, joined: rings that touch themselves, parts
   * that touch in a vertex, edges and vertices on cuts.
   */
  static Geometry onGrid(Random random, int size, double step) {
    List<Geometry> faces = new ArrayList<>();
    for (int i = 0; i < size; i++) {
      for (int j = 0; j < size; j++) {
        Coordinate a = new Coordinate(i * step, j * step);
        Coordinate b = new Coordinate((i + 1) * step, j * step);
        Coordinate c = new Coordinate((i + 1) * step, (j + 1) * step);
        Coordinate d = new Coordinate(i * step, (j + 1) * step);
        int kind = i + j == 0 ? 0 : random.nextInt(6);
        if (kind < 3) {
          faces.add(FACTORY.createPolygon(new Coordinate[] {a, b, c, d, a.copy()}));
        } else if (kind == 3) {
          faces.add(FACTORY.createPolygon(new Coordinate[] {a, b, c, a.copy()}));
        }
      }
    }
    return FACTORY.buildGeometry(faces).union();
  }

  /** Moves every vertex by up to a distance; may make the field invalid. */
  static Geometry shaken(Geometry field, Random random, double metres) {
    long seed = random.nextLong();
    Geometry copy = field.copy();
    copy.apply(
        (Coordinate at) -> {
          // A vertex that comes twice has to move the same way twice.
          Random own = new Random(at.hashCode() ^ seed);
          at.x += metres * (own.nextDouble() - 0.5);
          at.y += metres * (own.nextDouble() - 0.5);
        });
    copy.geometryChanged();
    return copy;
  }

  /** Management zones that share edges and cover a box: cells around places of chance. */
  static List<Geometry> zones(Random random, Envelope box) {
    List<Coordinate> places = new ArrayList<>();
    for (int i = 2 + random.nextInt(5); i > 0; i--) {
      places.add(
          new Coordinate(
              box.getMinX() + random.nextDouble() * box.getWidth(),
              box.getMinY() + random.nextDouble() * box.getHeight()));
    }
    VoronoiDiagramBuilder builder = new VoronoiDiagramBuilder();
    builder.setSites(places);
    builder.setClipEnvelope(box);
    Geometry diagram = builder.getDiagram(FACTORY);
    List<Geometry> zones = new ArrayList<>();
    for (int i = 0; i < diagram.getNumGeometries(); i++) {
      zones.add(diagram.getGeometryN(i));
    }
    return zones;
  }

  /** Rising cuts with bands of border and centre widths that reach beyond a box. */
  static double[] cuts(Random random, Envelope box) {
    double border = 1 + 2 * random.nextDouble();
    double centre = 2 + 30 * random.nextDouble();
    double from = box.getMinX() - centre * random.nextDouble();
    List<Double> cuts = new ArrayList<>();
    for (double x = from; x < box.getMaxX(); x += border + centre) {
      cuts.add(x);
      cuts.add(x + border);
    }
    return cuts.stream().mapToDouble(Double::doubleValue).toArray();
  }

  private static Coordinate[] closed(List<Coordinate> ring) {
    Coordinate[] closed = Arrays.copyOf(ring.toArray(new Coordinate[0]), ring.size() + 1);
    closed[ring.size()] = closed[0].copy();
    return closed;
  }

  /** The field with offset and along swapped. */
  private static Polygon turned(Polygon field) {
    field.apply(
        (Coordinate at) -> {
          double x = at.x;
          at.x = at.y;
          at.y = x;
        });
    field.geometryChanged();
    return field;
  }
}
