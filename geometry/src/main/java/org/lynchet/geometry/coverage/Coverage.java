package org.lynchet.geometry.coverage;

import java.io.Serializable;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.ToIntFunction;
import org.locationtech.jts.geom.Polygon;
import org.lynchet.geometry.guidance.AbLine;
import org.lynchet.geometry.guidance.Curve;
import org.lynchet.geometry.guidance.Guidance;
import org.lynchet.geometry.guidance.OffsetFrame;

/** Holds cells that cover a field: no gap, no overlap, shared edges vertex for vertex. */
public final class Coverage implements Serializable {
  private static final long serialVersionUID = 1L;

  private final Vertices vertices;
  private final ArrayList<Cell> cells;

  Coverage(Vertices vertices, List<Cell> cells) {
    this.vertices = vertices;
    this.cells = new ArrayList<>(cells);
  }

  /**
   * Cuts the regions of a field along lines of constant offset.
   *
   * @param regions the regions; headland is not cut
   * @param cutsMetres rising offsets
   */
  public static Coverage cut(Regions regions, double[] cutsMetres) {
    int known = regions.vertices().size();
    Vertices vertices = new Vertices(regions.vertices());
    Optional<List<Cell>> quick = ParallelCutter.cut(vertices, regions.list(), cutsMetres);
    if (quick.isPresent()) {
      List<Cell> cells = LongEdges.divide(vertices, quick.get());
      if (CellCheck.allValid(vertices, cells, Rings.Place.OFFSET, v -> v >= known)) {
        return new Coverage(vertices, cells);
      }
    }
    Vertices noded = new Vertices(regions.vertices());
    List<Cell> cells = NodedCutter.cut(noded, regions.list(), cutsMetres);
    return new Coverage(noded, LongEdges.divide(noded, cells));
  }

  /**
   * Cuts the regions of a field along lines of constant offset from a guidance line.
   *
   * @param regions the regions, in the guidance line's frame; headland is not cut
   * @param cutsMetres rising offsets
   */
  public static Coverage cut(Regions regions, Guidance guidance, double[] cutsMetres) {
    if (!(guidance instanceof Curve curve)) {
      return cut(regions, cutsMetres);
    }
    Vertices noded = new Vertices(regions.vertices());
    CurvedCuts cuts = CurvedCuts.through(noded, curve, cutsMetres);
    return new Coverage(noded, NodedCutter.cut(noded, regions.list(), cuts));
  }

  /**
   * Joins cells below a minimum area to the neighbour in the same strip with which they share the
   * longest edge.
   *
   * @param minimumSquareMetres 0 joins nothing
   * @param stripOf the strip of a cell
   */
  public SmallCellsJoined joinSmall(double minimumSquareMetres, ToIntFunction<Cell> stripOf) {
    return new SmallCells(vertices, cells, cell -> minimumSquareMetres, stripOf).join();
  }

  /** Rounds every vertex to 9 decimals of a degree; still a coverage of valid polygons. */
  public Coverage rounded() {
    return Rounding.round(this);
  }

  /**
   * Finds the pieces of groups of cells that hang together by shared edges.
   *
   * @param groupOf the group of a cell; below 0 for none
   */
  public List<Piece> pieces(ToIntFunction<Cell> groupOf) {
    return pieces(groupOf, new AbLine(frame()));
  }

  /**
   * Finds the pieces of groups of cells that hang together by shared edges, measured by a guidance
   * line.
   *
   * @param groupOf the group of a cell; below 0 for none
   */
  public List<Piece> pieces(ToIntFunction<Cell> groupOf, Guidance guidance) {
    return new PieceFinder(vertices, cells, guidance).find(groupOf);
  }

  /** The cells. */
  public List<Cell> cells() {
    return List.copyOf(cells);
  }

  /** A cell's area in square metres, in the plane; rounding does not change it. */
  public double areaSquareMetres(Cell cell) {
    return Double.isNaN(cell.areaBeforeRounding)
        ? Rings.area(vertices, cell.rings)
        : cell.areaBeforeRounding;
  }

  /** A cell as a polygon of offsets (x) and metres along the AB line (y). */
  public Polygon inOffsetFrame(Cell cell) {
    return Rings.polygon(vertices, cell.rings, Rings.Place.OFFSET);
  }

  /**
   * A cell of a {@linkplain #rounded rounded} coverage as a polygon of longitudes (x) and latitudes
   * (y) in degrees.
   */
  public Polygon inLonLat(Cell cell) {
    return Rings.polygon(vertices, cell.rings, Rings.Place.LON_LAT);
  }

  /** The frame of the AB line. */
  public OffsetFrame frame() {
    return vertices.frame();
  }

  Vertices vertices() {
    return vertices;
  }
}
