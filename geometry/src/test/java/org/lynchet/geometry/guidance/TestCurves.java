package org.lynchet.geometry.guidance;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;
import org.lynchet.geometry.frame.PlaneFrame;

/** Draws curves in metres east and north of a place, and takes them to longitude and latitude. */
public final class TestCurves {
  public static final double LONGITUDE = -94.1;
  public static final double LATITUDE = 43.55;
  public static final PlaneFrame PLANE = PlaneFrame.centredOn(LONGITUDE, LATITUDE);

  private TestCurves() {}

  /** A curve through places, and a field within 600 m of its plane's centre. */
  public static Curve through(List<Coordinate> metres) {
    return Curve.through(lonLat(metres), PLANE, field(600));
  }

  /** The envelope of a square field around the plane's centre, in degrees. */
  public static Envelope field(double halfMetres) {
    return new Envelope(
        PLANE.toLonLat(-halfMetres, -halfMetres), PLANE.toLonLat(halfMetres, halfMetres));
  }

  /** Metres to degrees. */
  public static List<Coordinate> lonLat(List<Coordinate> metres) {
    return metres.stream().map(at -> PLANE.toLonLat(at.x, at.y)).toList();
  }

  /**
   * Points of a circle's arc around a place; the curve turns left and begins northward.
   *
   * @param stepDegrees between neighbouring points
   */
  public static List<Coordinate> arc(
      double x, double y, double radius, double spanDegrees, double stepDegrees) {
    List<Coordinate> points = new ArrayList<>();
    int steps = (int) Math.round(spanDegrees / stepDegrees);
    for (int i = 0; i <= steps; i++) {
      double angle = Math.toRadians(spanDegrees * i / steps);
      points.add(new Coordinate(x + radius * Math.cos(angle), y + radius * Math.sin(angle)));
    }
    return points;
  }

  /** A line of waves of chance, on a heading of chance, its radius nowhere below about 600 m. */
  public static List<Coordinate> gentle(Random random) {
    double heading = 2 * Math.PI * random.nextDouble();
    double waves = 0.002 + 0.004 * random.nextDouble();
    double height = Math.min(0.8 / waves, 1 / (600 * waves * waves)) * random.nextDouble();
    double phase = 2 * Math.PI * random.nextDouble();
    double step = 2 + 20 * random.nextDouble();
    List<Coordinate> points = new ArrayList<>();
    for (double v = -350; v <= 350; v += step) {
      double u = height * (Math.sin(waves * v + phase) - Math.sin(phase));
      points.add(
          new Coordinate(
              u * Math.cos(heading) + v * Math.sin(heading),
              v * Math.cos(heading) - u * Math.sin(heading)));
    }
    return points;
  }
}
