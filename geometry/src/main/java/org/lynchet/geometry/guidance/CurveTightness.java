package org.lynchet.geometry.guidance;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.locationtech.jts.algorithm.locate.IndexedPointInAreaLocator;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.Location;
import org.lynchet.geometry.guidance.OffsetCourse.Part;

/**
 * Finds the offsets at which lines would have a corner in the field that no machine can drive.
 *
 * <p>On the inside of a bend a line of constant offset runs around a smaller radius, by as much as
 * its offset. Where the offset comes to the radius, a piece of the curve has no part in the line
 * any more, and what remains meets in a corner. It grows from then on, so the offset of the first
 * corner is sought from the curve outwards.
 */
public final class CurveTightness {
  /**
   * A line may turn by this much in one place: the points of a line that was drawn by hand are such
   * corners too. Common practice, no source.
   */
  public static final double CORNER_DEGREES = 20;

  /** Offsets are tried this far apart, in metres. */
  private static final double STEP = 0.5;

  /** How exact the offset of the first corner is, in metres. */
  private static final double EXACT = 0.001;

  private final Curve curve;
  private final IndexedPointInAreaLocator inside;
  private final Reach reach;

  /**
   * Gets ready.
   *
   * @param field polygons in the curve's frame
   */
  public CurveTightness(Curve curve, Geometry field) {
    this.curve = curve;
    this.inside = new IndexedPointInAreaLocator(field);
    this.reach = CurveReach.of(curve, field);
  }

  /**
   * The sharpest corner of the curve itself, at offset 0; or else the first corner on each side,
   * left and right; empty if there is none.
   */
  public List<TightPlace> find() {
    Optional<TightPlace> own = cornerAt(0);
    List<TightPlace> places = new ArrayList<>(own.stream().toList());
    if (!places.isEmpty()) {
      return places;
    }
    findTowards(reach.leastMetres()).ifPresent(places::add);
    findTowards(reach.greatestMetres()).ifPresent(places::add);
    return places;
  }

  private Optional<TightPlace> findTowards(double end) {
    double side = Math.signum(end);
    Optional<TightPlace> found = Optional.empty();
    double good = 0;
    for (double offset = STEP; found.isEmpty() && offset < side * end + STEP; offset += STEP) {
      double at = Math.min(offset, side * end);
      found = cornerAt(side * at);
      good = found.isEmpty() ? at : good;
    }
    double bad = found.map(place -> Math.abs(place.offsetMetres())).orElse(good);
    while (bad - good > EXACT) {
      double middle = (good + bad) / 2;
      Optional<TightPlace> there = cornerAt(side * middle);
      found = there.isPresent() ? there : found;
      bad = there.isPresent() ? middle : bad;
      good = there.isPresent() ? good : middle;
    }
    return found;
  }

  /** The sharpest corner that a line has in the field, if it is too sharp. */
  private Optional<TightPlace> cornerAt(double offset) {
    OffsetCourse line = new OffsetCourse(curve.course(), offset);
    List<Part> parts = line.parts();
    double sharpest = Math.toRadians(CORNER_DEGREES);
    Optional<TightPlace> found = Optional.empty();
    for (int i = 1; i < parts.size(); i++) {
      double y = parts.get(i).fromY();
      int segment = parts.get(i).segment();
      double turn =
          Math.abs(line.direction(segment, y) - line.direction(parts.get(i - 1).segment(), y));
      if (turn > sharpest) {
        Coordinate at = new Coordinate(line.xAt(segment, y), y);
        if (inside.locate(at) != Location.EXTERIOR) {
          sharpest = turn;
          Coordinate lonLat = curve.frame().toLonLat(at.x, at.y);
          found = Optional.of(new TightPlace(offset, lonLat.x, lonLat.y, Math.toDegrees(turn)));
        }
      }
    }
    return found;
  }
}
