package org.lynchet.prescription.intake;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.LineString;
import org.lynchet.formats.Feature;
import org.lynchet.formats.FeatureTable;
import org.lynchet.prescription.fault.Faults;
import org.lynchet.prescription.plan.PlannedGuidance.AlongCurve;

/** Takes the points of a plan's curve out of the lines of its file. */
final class CurveFile {
  private static final String ALLOWED = "one line of at least 3 points";

  private final AlongCurve planned;
  private final Faults faults;

  CurveFile(AlongCurve planned, Faults faults) {
    this.planned = planned;
    this.faults = faults;
  }

  /** The points, neighbours at different places; or nothing if there were faults. */
  Optional<List<Coordinate>> points(FeatureTable table) {
    List<LineString> lines = lines(table);
    Integer number = planned.number();
    if (lines.isEmpty()) {
      fault("the file has no line", "", "save the curve as a line, not as points or an area");
      return Optional.empty();
    }
    if (number == null && lines.size() > 1) {
      fault(
          "the file has " + lines.size() + " lines",
          "",
          "choose one: guidance.curve: {file: ..., line: 1} for the first");
      return Optional.empty();
    }
    if (number != null && number > lines.size()) {
      fault(
          "there is no line " + number + ": the file has " + lines.size(),
          "",
          "choose a line from 1 to " + lines.size());
      return Optional.empty();
    }
    return points(lines.get(number == null ? 0 : number - 1));
  }

  private static List<LineString> lines(FeatureTable table) {
    List<LineString> lines = new ArrayList<>();
    for (Feature feature : table.features()) {
      Geometry geometry = feature.geometry();
      for (int i = 0; i < geometry.getNumGeometries(); i++) {
        if (geometry.getGeometryN(i) instanceof LineString line && !line.isEmpty()) {
          lines.add(line);
        }
      }
    }
    return lines;
  }

  private Optional<List<Coordinate>> points(LineString line) {
    List<Coordinate> points = new ArrayList<>();
    for (int i = 0; i < line.getNumPoints(); i++) {
      Coordinate at = line.getCoordinateN(i);
      if (!(Math.abs(at.x) <= 180 && Math.abs(at.y) <= 90)) {
        fault(
            "the curve is outside the earth: " + at.x + ", " + at.y,
            ", vertex " + (i + 1),
            "check the coordinate system of the file, and that x is longitude");
        return Optional.empty();
      }
      if (points.isEmpty() || !points.get(points.size() - 1).equals2D(at)) {
        points.add(new Coordinate(at.x, at.y));
      }
    }
    if (points.size() > 2) {
      return Optional.of(points);
    }
    fault(
        points.size() == 1 ? "the curve has only one place" : "the curve has only two points",
        "",
        "a straight line is an AB line: give the two points as guidance.ab-line: {a: ..., b: ...}");
    return Optional.empty();
  }

  private void fault(String what, String place, String next) {
    faults.add(what, planned.file() + place, ALLOWED, next);
  }
}
