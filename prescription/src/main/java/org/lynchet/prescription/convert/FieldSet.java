package org.lynchet.prescription.convert;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.geom.util.PolygonExtracter;
import org.lynchet.formats.Column;
import org.lynchet.formats.Feature;
import org.lynchet.formats.FeatureTable;
import org.lynchet.formats.isoxml.TaskData;
import org.lynchet.formats.isoxml.TaskSet;
import org.lynchet.formats.isoxml.TaskSet.PartField;
import org.lynchet.formats.isoxml.TaskSet.Version;
import org.lynchet.geometry.coverage.FieldShape;
import org.lynchet.geometry.frame.PlaneFrame;
import org.lynchet.geometry.guidance.OffsetFrame;
import org.lynchet.prescription.taskdata.SentPlaces;

/** Makes task data of a table of boundaries: one field for each feature with an area. */
final class FieldSet {
  private FieldSet() {}

  static TaskSet of(FeatureTable table) {
    List<PartField> fields = new ArrayList<>();
    for (Feature feature : table.features()) {
      List<Geometry> parts = new ArrayList<>();
      for (Object part : PolygonExtracter.getPolygons(feature.geometry())) {
        if (!((Polygon) part).isEmpty()) {
          parts.add((Polygon) part);
        }
      }
      if (!parts.isEmpty()) {
        int number = fields.size() + 1;
        fields.add(
            new PartField(
                "PFD" + number,
                name(table, feature, number),
                Math.round(squareMetres(feature.geometry())),
                SentPlaces.area(parts),
                List.of()));
      }
    }
    String name = TaskData.name(table.name().isBlank() ? "fields" : table.name());
    return new TaskSet(
        Version.V4_3, name, name, List.of(), List.of(), List.of(), fields, List.of());
  }

  /** The first text of a feature; its number if it has none. */
  private static String name(FeatureTable table, Feature feature, int number) {
    for (int c = 0; c < table.columns().size(); c++) {
      String text = Objects.toString(feature.values().get(c), "").strip();
      if (table.columns().get(c).kind() == Column.Kind.TEXT && !text.isEmpty()) {
        return TaskData.name(text);
      }
    }
    return table.features().size() == 1 && !table.name().isBlank()
        ? TaskData.name(table.name())
        : "field " + number;
  }

  private static double squareMetres(Geometry area) {
    Coordinate at = area.getEnvelopeInternal().centre();
    OffsetFrame frame = OffsetFrame.onHeading(PlaneFrame.centredOn(at.x, at.y), at, 0);
    return Math.abs(FieldShape.of(area, frame).areaSquareMetres());
  }
}
