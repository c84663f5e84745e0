package org.lynchet.geometry.sweep;

import java.io.Serializable;
import java.util.ArrayList;
import java.util.List;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.GeometryComponentFilter;
import org.locationtech.jts.geom.LinearRing;
import org.locationtech.jts.geom.Polygon;

/** Holds a field's cross-section as runs, from which bands at any offsets are read off. */
public final class SweptField implements Serializable {
  private static final long serialVersionUID = 1L;

  private static final SweptField NOTHING =
      new SweptField(List.of(), new AreaLeftOf(new double[1], new double[1], new double[1]));

  /** By where they begin. */
  private final ArrayList<Run> runs;

  private final AreaLeftOf areaLeftOf;

  SweptField(List<Run> runs, AreaLeftOf areaLeftOf) {
    this.runs = new ArrayList<>(runs);
    this.areaLeftOf = areaLeftOf;
  }

  /**
   * Sweeps a field.
   *
   * @param parts valid polygons of offsets (x) and metres along the AB line (y) that share no more
   *     than points; none for an empty field
   * @param turnRadians by how much the line is turned clockwise about A before the field is swept;
   *     0 for the line of the offsets
   */
  public static SweptField of(List<Polygon> parts, double turnRadians) {
    List<Coordinate[]> rings = new ArrayList<>();
    for (Polygon part : parts) {
      part.apply(
          (GeometryComponentFilter)
              component -> {
                if (component instanceof LinearRing ring) {
                  rings.add(turned(ring.getCoordinates(), turnRadians));
                }
              });
    }
    List<Edge> edges = edges(rings);
    return edges.isEmpty() ? NOTHING : new Sweep(edges).sweep();
  }

  private static Coordinate[] turned(Coordinate[] ring, double radians) {
    if (radians == 0) {
      return ring;
    }
    double sin = StrictMath.sin(radians);
    double cos = StrictMath.cos(radians);
    Coordinate[] turned = new Coordinate[ring.length];
    for (int i = 0; i < ring.length; i++) {
      turned[i] =
          new Coordinate(ring[i].x * cos - ring[i].y * sin, ring[i].x * sin + ring[i].y * cos);
    }
    return turned;
  }

  private static List<Edge> edges(List<Coordinate[]> rings) {
    double least = Double.POSITIVE_INFINITY;
    double greatest = Double.NEGATIVE_INFINITY;
    for (Coordinate[] ring : rings) {
      for (Coordinate at : ring) {
        least = Math.min(least, at.y);
        greatest = Math.max(greatest, at.y);
      }
    }
    // Heights are counted from the middle, so that a far AB line costs no digits.
    double middle = (least + greatest) / 2;
    List<Edge> edges = new ArrayList<>();
    for (Coordinate[] ring : rings) {
      for (int i = 1; i < ring.length; i++) {
        if (ring[i - 1].x != ring[i].x) {
          edges.add(Edge.between(ring[i - 1], ring[i], middle));
        }
      }
    }
    return edges;
  }

  /** Whether there is nothing to read. */
  public boolean isEmpty() {
    return runs.isEmpty();
  }

  /** The least offset; infinite if there is nothing. */
  public double minOffsetMetres() {
    return isEmpty() ? Double.POSITIVE_INFINITY : runs.get(0).start;
  }

  /** The greatest offset; negative infinite if there is nothing. */
  public double maxOffsetMetres() {
    return runs.stream().mapToDouble(run -> run.end).max().orElse(Double.NEGATIVE_INFINITY);
  }

  /** The area of the field. */
  public double areaSquareMetres() {
    return areaLeftOf.whole();
  }

  /**
   * How much lies between neighbouring offsets.
   *
   * @param offsetsMetres n rising offsets
   * @return n + 1 areas in square metres: left of the first offset, between each two, right of the
   *     last
   */
  public double[] areasSquareMetres(double[] offsetsMetres) {
    double[] areas = new double[offsetsMetres.length + 1];
    double before = 0;
    for (int i = 0; i < offsetsMetres.length; i++) {
      double soFar = areaLeftOf.at(offsetsMetres[i]);
      areas[i] = soFar - before;
      before = soFar;
    }
    areas[offsetsMetres.length] = areaLeftOf.whole() - before;
    return areas;
  }

  /** Begins a reading from the left; each thread takes its own. */
  public BandReader reader() {
    return new BandReader(runs.toArray(new Run[0]), areaLeftOf.offsets());
  }
}
