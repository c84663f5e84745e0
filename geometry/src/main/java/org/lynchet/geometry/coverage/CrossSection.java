package org.lynchet.geometry.coverage;

import java.util.List;

/**
 * Measures a part of a field across the AB line: how far it reaches, how long it is at an offset,
 * and how much of it lies between offsets.
 *
 * <p>With the area on the left of every ring, a line of constant offset is inside for as long as
 * the sum of y over edges that cross it leftward less the sum over edges that cross it rightward;
 * an edge between two regions counts once each way and so drops out.
 */
public final class CrossSection implements Section {
  private final Vertices vertices;
  private final List<Region> regions;
  private final double min;
  private final double max;

  CrossSection(Vertices vertices, List<Region> regions) {
    this.vertices = vertices;
    this.regions = regions;
    double least = Double.POSITIVE_INFINITY;
    double greatest = Double.NEGATIVE_INFINITY;
    for (Region region : regions) {
      for (int vertex : region.rings[0]) {
        least = Math.min(least, vertices.x(vertex));
        greatest = Math.max(greatest, vertices.x(vertex));
      }
    }
    min = least;
    max = greatest;
  }

  @Override
  public boolean isEmpty() {
    return regions.isEmpty();
  }

  @Override
  public double minOffsetMetres() {
    return min;
  }

  @Override
  public double maxOffsetMetres() {
    return max;
  }

  @Override
  public double[] lengthsMetres(double[] offsetsMetres) {
    double[] lengths = new double[offsetsMetres.length];
    forEachEdge(
        offsetsMetres,
        (left, right, sign, above) -> {
          for (int i = above; i < lengths.length && offsetsMetres[i] <= vertices.x(right); i++) {
            lengths[i] += sign * yAt(left, right, offsetsMetres[i]);
          }
        });
    return lengths;
  }

  @Override
  public double[] areasSquareMetres(double[] offsetsMetres) {
    double[] areas = new double[offsetsMetres.length + 1];
    forEachEdge(
        offsetsMetres,
        (left, right, sign, above) -> {
          double x = vertices.x(left);
          double y = vertices.y(left);
          int i = above;
          for (; i < offsetsMetres.length && offsetsMetres[i] < vertices.x(right); i++) {
            double yCut = yAt(left, right, offsetsMetres[i]);
            areas[i] += sign * (offsetsMetres[i] - x) * (y + yCut) / 2;
            x = offsetsMetres[i];
            y = yCut;
          }
          areas[i] += sign * (vertices.x(right) - x) * (y + vertices.y(right)) / 2;
        });
    return areas;
  }

  /**
   * Goes by the vertices at which rings turn: a piece that ends short of an offset ends in a vertex
   * from which both edges lead back.
   */
  @Override
  public boolean[] mayEnd(double[] offsetsMetres, double nearMetres) {
    boolean[] may = new boolean[offsetsMetres.length + 1];
    for (Region region : regions) {
      for (int[] ring : region.rings) {
        double u = vertices.x(ring[ring.length - 2]);
        double v = vertices.x(ring[ring.length - 1]);
        int above = 0;
        for (int vertex : ring) {
          double w = vertices.x(vertex);
          if (!(u < v ? v < w : u > v && v > w)) {
            above = firstAbove(offsetsMetres, v - nearMetres, above);
            may[above] = true;
            for (int i = above; i < offsetsMetres.length && offsetsMetres[i] <= v + nearMetres; ) {
              may[++i] = true;
            }
          }
          u = v;
          v = w;
        }
      }
    }
    return may;
  }

  private interface EdgeVisitor {
    /** The ends, the edge's sign, and the index of the first offset above its left end. */
    void visit(int left, int right, int sign, int above);
  }

  private void forEachEdge(double[] offsets, EdgeVisitor visitor) {
    for (Region region : regions) {
      for (int[] ring : region.rings) {
        int u = ring[ring.length - 1];
        int aboveU = firstAbove(offsets, vertices.x(u), 0);
        for (int v : ring) {
          int aboveV = firstAbove(offsets, vertices.x(v), aboveU);
          if (vertices.x(u) < vertices.x(v)) {
            visitor.visit(u, v, -1, aboveU);
          } else if (vertices.x(u) > vertices.x(v)) {
            visitor.visit(v, u, 1, aboveV);
          }
          u = v;
          aboveU = aboveV;
        }
      }
    }
  }

  private double yAt(int left, int right, double offset) {
    double x = vertices.x(left);
    double y = vertices.y(left);
    return y + (vertices.y(right) - y) * ((offset - x) / (vertices.x(right) - x));
  }

  /** The index of the first offset above x, looked for from one that is likely near. */
  private static int firstAbove(double[] offsets, double x, int near) {
    int at = near;
    while (at < offsets.length && offsets[at] <= x) {
      at++;
    }
    while (at > 0 && offsets[at - 1] > x) {
      at--;
    }
    return at;
  }
}
