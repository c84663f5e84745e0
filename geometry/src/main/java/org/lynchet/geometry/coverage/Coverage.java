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

  /** No strip: where cells of waterways lie. */
  private static final int UNPLANTED = -1;

  /** Room for crossings on each cut: most fields are crossed twice. */
  private static final int CROSSINGS = 3;

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
    Vertices vertices = new Vertices(regions.vertices(), CROSSINGS * cutsMetres.length);
    Optional<List<Cell>> quick = ParallelCutter.cut(vertices, regions.list(), cutsMetres);
    if (quick.isPresent()) {
      List<Cell> cells = LongEdges.divide(vertices, quick.get());
      if (CellCheck.allValid(vertices, cells, Rings.Place.OFFSET, v -> v >= known)) {
        return new Coverage(vertices, cells);
      }
    }
    Vertices noded = new Vertices(regions.vertices(), known);
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
    Vertices noded = new Vertices(regions.vertices(), regions.vertices().size());
    BentCuts cuts = BentCuts.through(noded, curve, cutsMetres);
    return new Coverage(noded, NodedCutter.cut(noded, regions.list(), cuts));
  }

  /**
   * Finds the pieces of groups of cells, as {@link #pieces(ToIntFunction, Guidance)} would after
   * {@link #cut(Regions, Guidance, double[])}; along an AB line without the cost of a coverage that
   * can be written: nothing is checked for what comes to touch within the exactness of numbers, and
   * long edges stay whole.
   *
   * @param cutsMetres rising offsets
   * @param groupOf the group of a cell; below 0 for none
   */
  public static List<Piece> pieces(
      Regions regions, Guidance guidance, double[] cutsMetres, ToIntFunction<Cell> groupOf) {
    if (guidance instanceof AbLine) {
      Vertices vertices = new Vertices(regions.vertices(), CROSSINGS * cutsMetres.length);
      Optional<List<Cell>> quick = ParallelCutter.cut(vertices, regions.list(), cutsMetres);
      if (quick.isPresent()) {
        return new PieceFinder(vertices, quick.get(), guidance).find(groupOf);
      }
    }
    return cut(regions, guidance, cutsMetres).pieces(groupOf, guidance);
  }

  /**
   * Joins cells below a minimum area to the neighbour in the same strip with which they share the
   * longest edge. Cells of waterways neither join nor are joined.
   *
   * @param minimumSquareMetres 0 joins nothing
   * @param stripOf the strip of a cell
   */
  public SmallCellsJoined joinSmall(double minimumSquareMetres, ToIntFunction<Cell> stripOf) {
    return new SmallCells(
            vertices,
            cells,
            cell -> cell.region().planted() ? minimumSquareMetres : 0,
            cell -> cell.region().planted() ? stripOf.applyAsInt(cell) : UNPLANTED)
        .join();
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

  /**
   * The waterways of a {@linkplain #rounded rounded} coverage, each connected one as a whole,
   * though it is cut where the strips are.
   */
  public List<Waterway> waterways() {
    List<Waterway> waterways = new ArrayList<>();
    for (Piece piece : pieces(cell -> cell.region().planted() ? -1 : 0)) {
      List<Cell> own = piece.cells().stream().map(cells::get).toList();
      List<int[][]> joined =
          FaceJoiner.join(vertices, Rings.Place.LON_LAT, own.stream().map(c -> c.rings).toList());
      double area = own.stream().mapToDouble(this::areaSquareMetres).sum();
      double parts = joined.stream().mapToDouble(part -> Rings.area(vertices, part)).sum();
      for (int[][] part : joined) {
        double share = joined.size() == 1 ? 1 : Rings.area(vertices, part) / parts;
        waterways.add(
            new Waterway(Rings.polygon(vertices, part, Rings.Place.LON_LAT), area * share));
      }
    }
    return waterways;
  }

  /** The frame of the AB line. */
  public OffsetFrame frame() {
    return vertices.frame();
  }

  Vertices vertices() {
    return vertices;
  }
}
