package org.lynchet.geometry.guidance;

import java.util.ArrayList;
import java.util.List;
import org.locationtech.jts.geom.Coordinate;

/**
 * Guides by a straight line: offset and along are the coordinates of its frame.
 *
 * @param frame the frame of the AB line
 */
public record AbLine(OffsetFrame frame) implements Guidance {

  /** How far a line drawn straight in longitude and latitude may bow, in metres. */
  private static final double BOW = 0.0005;

  @Override
  public String name() {
    return "AB line";
  }

  @Override
  public double offsetMetres(double x, double y) {
    return x;
  }

  @Override
  public double alongMetres(double x, double y) {
    return y;
  }

  @Override
  public double directionRadians(double x, double y) {
    return 0;
  }

  @Override
  public List<Coordinate> line(double offsetMetres, double from, double to) {
    int parts = Math.max(1, (int) Math.ceil((to - from) / frame.longestWithinBowMetres(BOW)));
    List<Coordinate> points = new ArrayList<>(parts + 1);
    for (int i = 0; i <= parts; i++) {
      points.add(frame.toLonLat(offsetMetres, from + (to - from) * i / parts));
    }
    return points;
  }

  @Override
  public double lengthMetres(double offsetMetres, double from, double to) {
    return to - from;
  }
}
