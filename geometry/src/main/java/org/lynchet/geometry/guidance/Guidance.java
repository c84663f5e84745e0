package org.lynchet.geometry.guidance;

import java.io.Serializable;
import java.util.List;
import org.locationtech.jts.geom.Coordinate;

/**
 * The line that machines steer by: straight ({@link AbLine}) or bent ({@link Curve}).
 *
 * <p>Every place has an <em>offset</em>, its distance from the line in metres, positive to the
 * right; and a place <em>along</em> the line, that of the nearest point of the line: it rises along
 * every line of constant offset, so that places of different passes can be compared.
 */
public sealed interface Guidance extends Serializable permits AbLine, Curve {

  /** What it is called: AB line or curve. */
  String name();

  /** The frame in which places are given and zones are cut. */
  OffsetFrame frame();

  /** The offset in metres of a place of the frame. */
  double offsetMetres(double x, double y);

  /** Where along the line a place of the frame lies. */
  double alongMetres(double x, double y);

  /** Where along the line a place in degrees lies, longitude (x) and latitude (y). */
  default double alongMetres(Coordinate lonLat) {
    Coordinate at = frame().toOffset(lonLat.x, lonLat.y);
    return alongMetres(at.x, at.y);
  }

  /**
   * The direction of the line of constant offset through a place of the frame, in radians clockwise
   * from y; a row there runs that way.
   */
  double directionRadians(double x, double y);

  /**
   * The line of constant offset from one place along the guidance line to another, in longitude (x)
   * and latitude (y): drawn straight from point to point, it strays by at most 1 mm.
   *
   * @param offsetMetres the offset
   * @param fromAlongMetres where it begins
   * @param toAlongMetres where it ends, not before that
   */
  List<Coordinate> line(double offsetMetres, double fromAlongMetres, double toAlongMetres);

  /** The length in metres of that line. */
  double lengthMetres(double offsetMetres, double fromAlongMetres, double toAlongMetres);
}
