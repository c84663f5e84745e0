package org.lynchet.geometry.guidance;

import java.util.ArrayList;
import java.util.List;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.LineString;
import org.lynchet.geometry.frame.PlaneFrame;

/**
 * Guides by a bent line, extended straight beyond its ends.
 *
 * <p>The offset of a place is its distance from the line, so lines of constant offset are what a
 * machine at that distance draws: around the outside of a bend arcs about its vertices, on the
 * inside trimmed where they meet. A line through points stands for a smooth one; distances are off
 * by no more than the line is, however far the offset, while lines with pointed outsides would
 * stray the more the farther out they are.
 *
 * <p>Its directions must span less than 180 degrees, by one degree. In the frame that has y along
 * the middle of them the curve and its lines of constant offset then rise in y everywhere, see
 * {@link OffsetCourse}.
 */
public final class Curve implements Guidance {
  private static final long serialVersionUID = 1L;

  /**
   * Directions span less than this: near 180 degrees the ends run so nearly side by side that lines
   * far on the inside of the bend would end only many kilometres on.
   */
  public static final double WIDEST_SPAN_DEGREES = 179;

  /** How far, in metres, lines may be from the true offset: half of the millimetre asked for. */
  private static final double BOW = 0.0005;

  /**
   * How far offsets may be outside of the field, in metres: half of a swath, and more than that.
   */
  private static final double BEYOND = 100;

  private final OffsetFrame frame;
  private final Course course;
  private final double longest;
  private final ArrayList<Coordinate> points;
  private final CurveDirections directions;

  private Curve(
      OffsetFrame frame, Course course, List<Coordinate> points, CurveDirections directions) {
    this.frame = frame;
    this.course = course;
    this.longest = frame.longestWithinBowAnyWayMetres(BOW);
    this.points = new ArrayList<>(points);
    this.directions = directions;
  }

  /**
   * A curve through points.
   *
   * @param lonLat at least two points, neighbours at different places, their {@linkplain
   *     CurveDirections directions} spanning less than {@link #WIDEST_SPAN_DEGREES}
   * @param plane the plane of the field
   * @param field where the field lies, longitudes (x) and latitudes (y)
   */
  public static Curve through(List<Coordinate> lonLat, PlaneFrame plane, Envelope field) {
    CurveDirections directions = CurveDirections.of(lonLat, plane);
    if (Math.toDegrees(directions.spanRadians()) >= WIDEST_SPAN_DEGREES) {
      throw new IllegalArgumentException("the curve turns back on itself");
    }
    Coordinate first = lonLat.get(0);
    double trueNorth = plane.trueNorthRadians(first.x, first.y);
    OffsetFrame frame =
        OffsetFrame.onHeading(plane, first, Math.toDegrees(directions.middleRadians() - trueNorth));
    List<Coordinate> at = lonLat.stream().map(p -> frame.toOffset(p.x, p.y)).toList();
    return new Curve(frame, extended(at, frame, field, directions), lonLat, directions);
  }

  private static Course extended(
      List<Coordinate> at, OffsetFrame frame, Envelope field, CurveDirections directions) {
    // An end rises in y by the sine of this angle, and its line at offset r begins r times the
    // cosine lower.
    double angle = (Math.PI - directions.spanRadians()) / 2;
    double perOffset = Math.max(1, 1 / Math.tan(angle));
    int n = at.size();
    double[] x = new double[n + 2];
    double[] y = new double[n + 2];
    for (int i = 0; i < n; i++) {
      x[i + 1] = at.get(i).x;
      y[i + 1] = at.get(i).y;
    }
    Coordinate before = beyond(at.get(1), at.get(0), frame, field, perOffset);
    Coordinate after = beyond(at.get(n - 2), at.get(n - 1), frame, field, perOffset);
    x[0] = before.x;
    y[0] = before.y;
    x[n + 1] = after.x;
    y[n + 1] = after.y;
    return new Course(x, y);
  }

  /**
   * A place straight on, so far that no place of the field is nearer to anything beyond it, and
   * lines on the inside of a bend are whole.
   */
  private static Coordinate beyond(
      Coordinate from, Coordinate end, OffsetFrame frame, Envelope field, double perOffset) {
    double farthest = 0;
    for (double lon : new double[] {field.getMinX(), field.getMaxX()}) {
      for (double lat : new double[] {field.getMinY(), field.getMaxY()}) {
        farthest = Math.max(farthest, frame.toOffset(lon, lat).distance(end));
      }
    }
    double t = (farthest + BEYOND) * perOffset / from.distance(end);
    return new Coordinate(end.x + t * (end.x - from.x), end.y + t * (end.y - from.y));
  }

  /** The points that it was made of, longitude (x) and latitude (y) in degrees. */
  public List<Coordinate> points() {
    return List.copyOf(points);
  }

  /** Which ways it runs. */
  public CurveDirections directions() {
    return directions;
  }

  @Override
  public String name() {
    return "curve";
  }

  @Override
  public OffsetFrame frame() {
    return frame;
  }

  @Override
  public double offsetMetres(double x, double y) {
    double distance = course.distanceTo(course.nearest(x, y), x, y);
    return course.isRight(x, y) ? distance : -distance;
  }

  @Override
  public double alongMetres(double x, double y) {
    int k = course.nearest(x, y);
    double foot = course.footOn(k, x, y);
    if (foot > 0 && foot < course.length(k)) {
      return course.alongSegment(k) + foot;
    }
    int vertex = foot > 0 ? k + 1 : k;
    if (vertex == 0 || vertex == course.segments()) {
      return course.alongBefore(vertex);
    }
    double along =
        course.directionX(vertex - 1) * (x - course.x(vertex))
            + course.directionY(vertex - 1) * (y - course.y(vertex));
    double across =
        course.directionY(vertex - 1) * (x - course.x(vertex))
            - course.directionX(vertex - 1) * (y - course.y(vertex));
    double turned = Math.atan2(along, Math.abs(across));
    return course.alongBefore(vertex)
        + Math.max(0, Math.min(Math.abs(course.turn(vertex)), turned));
  }

  @Override
  public double directionRadians(double x, double y) {
    int k = course.nearest(x, y);
    double foot = course.footOn(k, x, y);
    if (foot > 0 && foot < course.length(k)) {
      return Math.atan2(course.directionX(k), course.directionY(k));
    }
    // Around a vertex the line is an arc: it runs across the direction from the vertex.
    int vertex = foot > 0 ? k + 1 : k;
    double side = course.isRight(x, y) ? 1 : -1;
    double awayX = side * (x - course.x(vertex));
    double awayY = side * (y - course.y(vertex));
    return awayX == 0 && awayY == 0
        ? Math.atan2(course.directionX(k), course.directionY(k))
        : Math.atan2(-awayY, awayX);
  }

  @Override
  public List<Coordinate> line(double offsetMetres, double fromAlong, double toAlong) {
    List<Coordinate> line = new ArrayList<>();
    for (LinePoint point : stretch(offsetMetres, fromAlong, toAlong)) {
      line.add(frame.toLonLat(point.x(), point.y()));
    }
    return line;
  }

  @Override
  public double lengthMetres(double offsetMetres, double fromAlong, double toAlong) {
    List<LinePoint> points = stretch(offsetMetres, fromAlong, toAlong);
    double length = 0;
    for (int i = 1; i < points.size(); i++) {
      LinePoint from = points.get(i - 1);
      LinePoint to = points.get(i);
      length += Math.hypot(to.x() - from.x(), to.y() - from.y());
    }
    return length;
  }

  private List<LinePoint> stretch(double offsetMetres, double fromAlong, double toAlong) {
    List<LinePoint> all =
        OffsetLine.draw(
            course, offsetMetres, Double.NEGATIVE_INFINITY, Double.POSITIVE_INFINITY, BOW, longest);
    List<LinePoint> stretch = Stretches.between(all, fromAlong, toAlong);
    for (double more = 1; stretch.size() < Math.min(2, all.size()); more *= 2) {
      // All of it lies in one corner.
      stretch = Stretches.between(all, fromAlong - more, toAlong + more);
    }
    return stretch;
  }

  /**
   * The points of a line of constant offset, rising in y of the frame; chords are within 0.5 mm of
   * it.
   *
   * @param fromY where it begins
   * @param toY where it ends, if it reaches as far
   */
  public List<LinePoint> pointsAt(double offsetMetres, double fromY, double toY) {
    return OffsetLine.draw(course, offsetMetres, fromY, toY, BOW, longest);
  }

  /**
   * The same with fewer points, for measuring lengths.
   *
   * @param bowMetres how far chords may be from the line
   */
  public List<LinePoint> pointsAt(double offsetMetres, double fromY, double toY, double bowMetres) {
    return OffsetLine.draw(course, offsetMetres, fromY, toY, bowMetres, Double.POSITIVE_INFINITY);
  }

  /** From which offset to which an area in the frame reaches, to a nanometre. */
  public Reach reach(Geometry area) {
    return CurveReach.of(this, area);
  }

  /** The extended curve in its frame. */
  LineString inFrame() {
    Coordinate[] at = new Coordinate[course.segments() + 1];
    for (int v = 0; v < at.length; v++) {
      at[v] = new Coordinate(course.x(v), course.y(v));
    }
    return new GeometryFactory().createLineString(at);
  }

  Course course() {
    return course;
  }
}
