package org.lynchet.geometry.coverage;

import java.io.Serializable;
import java.util.Arrays;
import java.util.Optional;
import org.locationtech.jts.geom.Coordinate;
import org.lynchet.geometry.frame.RoundedDegrees;
import org.lynchet.geometry.guidance.OffsetFrame;

/**
 * Holds the vertices of a coverage, each once: offset x and metres along y in the offset frame, and
 * longitude and latitude in degrees.
 *
 * <p>A vertex of the boundary keeps the longitude and latitude that came in. Others are projected
 * back when they are first asked for.
 */
final class Vertices implements Serializable {
  private static final long serialVersionUID = 1L;

  /**
   * Grid points in a metre on which boundaries and nodes lie in the offset frame: 4 nanometres, so
   * that strip edges keep to 0.001 mm, and a power of two, so that rounding is exact.
   */
  static final double STEPS_PER_METRE = 1 << 28;

  private static final double METRES_PER_STEP = 1 / STEPS_PER_METRE;

  /** So many places to be projected back make up for getting the quick conversion ready. */
  private static final int MANY = 80;

  private final OffsetFrame frame;
  private double[] x;
  private double[] y;
  private double[] longitude;
  private double[] latitude;
  private int size;

  Vertices(OffsetFrame frame, int expected) {
    this.frame = frame;
    int capacity = Math.max(expected, 16);
    x = new double[capacity];
    y = new double[capacity];
    longitude = new double[capacity];
    latitude = new double[capacity];
  }

  /**
   * Copies the vertices of another set, which keeps what it has.
   *
   * @param more how many are likely to be added
   */
  Vertices(Vertices from, int more) {
    frame = from.frame;
    size = from.size;
    int capacity = Math.max(size + more, 16);
    x = Arrays.copyOf(from.x, capacity);
    y = Arrays.copyOf(from.y, capacity);
    longitude = Arrays.copyOf(from.longitude, capacity);
    latitude = Arrays.copyOf(from.latitude, capacity);
  }

  OffsetFrame frame() {
    return frame;
  }

  int size() {
    return size;
  }

  /** Adds a vertex of the offset frame; returns its index. */
  int add(double offset, double along) {
    return add(offset, along, Double.NaN, Double.NaN);
  }

  /** Adds a vertex that is known in both. */
  int add(double offset, double along, double longitudeDegrees, double latitudeDegrees) {
    if (size == x.length) {
      int capacity = size * 2;
      x = Arrays.copyOf(x, capacity);
      y = Arrays.copyOf(y, capacity);
      longitude = Arrays.copyOf(longitude, capacity);
      latitude = Arrays.copyOf(latitude, capacity);
    }
    x[size] = offset;
    y[size] = along;
    longitude[size] = longitudeDegrees;
    latitude[size] = latitudeDegrees;
    return size++;
  }

  /** Adds a vertex of longitude and latitude; its place in the offset frame is on the grid. */
  int addLonLat(double longitudeDegrees, double latitudeDegrees) {
    Coordinate at = frame.toOffset(longitudeDegrees, latitudeDegrees);
    return add(onGrid(at.x), onGrid(at.y), longitudeDegrees, latitudeDegrees);
  }

  /** Adding 0 turns a negative zero into zero. */
  private static double onGrid(double metres) {
    return Math.rint(metres * STEPS_PER_METRE) * METRES_PER_STEP + 0.0;
  }

  /** Whether two vertices are in the same place of the offset frame. */
  boolean isSamePlace(int vertex, int other) {
    return x[vertex] == x[other] && y[vertex] == y[other];
  }

  double x(int vertex) {
    return x[vertex];
  }

  double y(int vertex) {
    return y[vertex];
  }

  /** The first ordinate in one of its two places. */
  double first(Rings.Place place, int vertex) {
    return place == Rings.Place.OFFSET ? x[vertex] : longitude[vertex];
  }

  /** The second ordinate in one of its two places. */
  double second(Rings.Place place, int vertex) {
    return place == Rings.Place.OFFSET ? y[vertex] : latitude[vertex];
  }

  /** The first ordinates of all vertices, by vertex, until one is added; only to be read. */
  double[] firsts(Rings.Place place) {
    return place == Rings.Place.OFFSET ? x : longitude;
  }

  /** The second ordinates of all vertices, in the same way. */
  double[] seconds(Rings.Place place) {
    return place == Rings.Place.OFFSET ? y : latitude;
  }

  double longitude(int vertex) {
    return longitude[vertex];
  }

  double latitude(int vertex) {
    return latitude[vertex];
  }

  /**
   * Rounds every longitude and latitude to multiples of 1e-9 degree, projecting back first where
   * that is still to do.
   *
   * @return for each vertex whether it moved
   */
  boolean[] round() {
    projectBack();
    boolean[] moved = new boolean[size];
    for (int v = 0; v < size; v++) {
      double lon = RoundedDegrees.of(longitude[v]);
      double lat = RoundedDegrees.of(latitude[v]);
      moved[v] = lon != longitude[v] || lat != latitude[v];
      longitude[v] = lon;
      latitude[v] = lat;
    }
    return moved;
  }

  private void projectBack() {
    QuickLonLat quick = quickLonLat().orElse(null);
    for (int v = 0; v < size; v++) {
      if (Double.isNaN(longitude[v])) {
        if (quick != null) {
          longitude[v] = quick.longitude(x[v], y[v]);
          latitude[v] = quick.latitude(x[v], y[v]);
        } else {
          Coordinate at = frame.toLonLat(x[v], y[v]);
          longitude[v] = at.x;
          latitude[v] = at.y;
        }
      }
    }
  }

  /** A quick conversion for what is to be projected back, if that is much. */
  private Optional<QuickLonLat> quickLonLat() {
    int many = 0;
    double minX = Double.POSITIVE_INFINITY;
    double maxX = Double.NEGATIVE_INFINITY;
    double minY = Double.POSITIVE_INFINITY;
    double maxY = Double.NEGATIVE_INFINITY;
    for (int v = 0; v < size; v++) {
      if (Double.isNaN(longitude[v])) {
        many++;
        minX = x[v] < minX ? x[v] : minX;
        maxX = x[v] > maxX ? x[v] : maxX;
        minY = y[v] < minY ? y[v] : minY;
        maxY = y[v] > maxY ? y[v] : maxY;
      }
    }
    return many < MANY ? Optional.empty() : QuickLonLat.over(frame, minX, maxX, minY, maxY);
  }
}
