package org.lynchet.prescription.driving;

import java.io.Serializable;
import java.util.List;
import org.locationtech.jts.geom.Coordinate;
import org.lynchet.geometry.guidance.Guidance;
import org.lynchet.geometry.guidance.OffsetFrame;
import org.lynchet.prescription.zone.DrivenPass;

/**
 * Measures a pass along its line.
 *
 * @param fromMetres where it begins along the guidance line
 * @param toMetres where it ends
 * @param inRowMetres its length, gaps left out
 * @param gapMetres the gaps between its stretches
 */
record PassLength(double fromMetres, double toMetres, double inRowMetres, double gapMetres)
    implements Serializable {

  static PassLength of(DrivenPass pass, Guidance guidance) {
    OffsetFrame frame = guidance.frame();
    double inRow = 0;
    double from = Double.POSITIVE_INFINITY;
    double to = Double.NEGATIVE_INFINITY;
    for (int i = 0; i < pass.line().getNumGeometries(); i++) {
      Coordinate[] points = pass.line().getGeometryN(i).getCoordinates();
      double first = along(points[0], guidance);
      double last = along(points[points.length - 1], guidance);
      from = Math.min(from, Math.min(first, last));
      to = Math.max(to, Math.max(first, last));
      inRow += length(List.of(points), frame);
    }
    double whole = length(guidance.line(pass.pass().centreMetres(), from, to), frame);
    return new PassLength(from, to, inRow, Math.max(0, whole - inRow));
  }

  private static double along(Coordinate lonLat, Guidance guidance) {
    Coordinate at = guidance.frame().toOffset(lonLat.x, lonLat.y);
    return guidance.alongMetres(at.x, at.y);
  }

  private static double length(List<Coordinate> line, OffsetFrame frame) {
    double length = 0;
    for (int i = 1; i < line.size(); i++) {
      Coordinate from = frame.toOffset(line.get(i - 1).x, line.get(i - 1).y);
      Coordinate to = frame.toOffset(line.get(i).x, line.get(i).y);
      length += from.distance(to);
    }
    return length;
  }
}
