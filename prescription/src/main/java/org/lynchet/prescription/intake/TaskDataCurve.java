package org.lynchet.prescription.intake;

import java.nio.file.Path;
import java.util.List;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.LineString;
import org.lynchet.formats.DeclaredCrs;
import org.lynchet.formats.Fault;
import org.lynchet.formats.Feature;
import org.lynchet.formats.FeatureReader;
import org.lynchet.formats.FeatureTable;
import org.lynchet.formats.FormatException;
import org.lynchet.formats.isoxml.TaskSet;
import org.lynchet.formats.isoxml.TaskSet.Kind;

/** Reads a curve of task data as a table of one line. */
final class TaskDataCurve implements FeatureReader {
  private static final int FEWEST_POINTS = 3;

  private final String id;

  /** Takes the line's id, such as GPN5; empty for the only one. */
  TaskDataCurve(String id) {
    this.id = id;
  }

  @Override
  public FeatureTable read(Path file) throws FormatException {
    TaskSet.Line line = TaskDataLine.choose(file, id, file.toString());
    if (line.kind() != Kind.CURVE || line.points().size() < FEWEST_POINTS) {
      throw new FormatException(
          new Fault(
              TaskDataLine.told(line, "no curve"),
              file.toString(),
              "a curve of at least 3 points",
              "choose another line; a straight line goes under guidance.ab-line"));
    }
    LineString drawn =
        new GeometryFactory().createLineString(line.points().toArray(new Coordinate[0]));
    Feature feature = new Feature(drawn, List.of());
    return new FeatureTable(line.name(), DeclaredCrs.LON_LAT, List.of(), List.of(feature));
  }
}
