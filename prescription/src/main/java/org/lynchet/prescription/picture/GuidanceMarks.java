package org.lynchet.prescription.picture;

import java.util.List;
import org.locationtech.jts.geom.Coordinate;
import org.lynchet.geometry.guidance.Curve;
import org.lynchet.prescription.zone.FieldLayout;

/** Draws the line that machines steer by, if it lies near the field. */
interface GuidanceMarks {
  /** The marks of a guidance line. */
  static GuidanceMarks of(FieldLayout layout) {
    FieldEdge edge = FieldEdge.of(layout.boundary(), layout.guidance());
    return layout.guidance() instanceof Curve curve
        ? new CurveMarks(curve, edge)
        : new AbLineMarks(edge);
  }

  /** How far the line lies outside the field, in metres: 0 on it, negative left of the field. */
  double outsideMetres();

  /** Whether it lies so near that it is drawn. */
  boolean isDrawn();

  /** Places of the line, in its frame, for a map that shows it. */
  List<Coordinate> places();

  /** The marks; takes the room of both letters. */
  List<Mark> marks(MapPlane plane, Labels labels);
}
