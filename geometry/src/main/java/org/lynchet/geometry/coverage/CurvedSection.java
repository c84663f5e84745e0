package org.lynchet.geometry.coverage;

import java.util.Arrays;
import java.util.List;
import org.locationtech.jts.geom.MultiPolygon;
import org.lynchet.geometry.guidance.Curve;
import org.lynchet.geometry.guidance.Reach;

/** Measures a part of a field across a curve: areas by cutting it, lengths line by line. */
final class CurvedSection implements Section {
  /** How far the chords of measured lines may be from them, in metres: 5 mm, 1e-5 of lengths. */
  private static final double BOW = 0.005;

  private final Vertices vertices;
  private final List<Region> regions;
  private final Curve curve;
  private final MultiPolygon area;
  private final Reach reach;

  CurvedSection(Vertices vertices, List<Region> regions, Curve curve) {
    this.vertices = vertices;
    this.regions = regions;
    this.curve = curve;
    List<int[][]> rings = regions.stream().map(region -> region.rings).toList();
    this.area = Rings.multiPolygon(vertices, rings, Rings.Place.OFFSET);
    this.reach = curve.reach(area);
  }

  @Override
  public boolean isEmpty() {
    return regions.isEmpty();
  }

  @Override
  public double minOffsetMetres() {
    return reach.leastMetres();
  }

  @Override
  public double maxOffsetMetres() {
    return reach.greatestMetres();
  }

  @Override
  public double[] areasSquareMetres(double[] offsetsMetres) {
    double[] areas = new double[offsetsMetres.length + 1];
    Vertices noded = new Vertices(vertices, vertices.size());
    BentCuts cuts = BentCuts.through(noded, curve, offsetsMetres);
    for (Cell cell : NodedCutter.cut(noded, regions, cuts)) {
      areas[cell.band()] += Rings.area(noded, cell.rings);
    }
    return areas;
  }

  @Override
  public double[] lengthsMetres(double[] offsetsMetres) {
    LengthInside inside = new LengthInside(area);
    double low = inside.envelope().getMinY();
    double high = inside.envelope().getMaxY();
    double[] lengths = new double[offsetsMetres.length];
    for (int i = 0; i < lengths.length; i++) {
      boolean reached =
          offsetsMetres[i] >= reach.leastMetres() && offsetsMetres[i] <= reach.greatestMetres();
      lengths[i] =
          reached ? inside.of(curve.pointsAt(offsetsMetres[i], low - 1, high + 1, BOW)) : 0;
    }
    return lengths;
  }

  /** Says yes everywhere: an edge can turn back from a curve between its ends. */
  @Override
  public boolean[] mayEnd(double[] offsetsMetres, double nearMetres) {
    boolean[] may = new boolean[offsetsMetres.length + 1];
    Arrays.fill(may, true);
    return may;
  }
}
