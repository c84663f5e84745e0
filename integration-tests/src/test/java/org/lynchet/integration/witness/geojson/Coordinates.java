package org.lynchet.integration.witness.geojson;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.function.BiConsumer;
import org.lynchet.integration.witness.Findings;

/** Checks the coordinates of one geometry, from the outer array in to the numbers. */
final class Coordinates {
  private final Findings findings;
  private final Bbox box;

  /** Reports into the findings and widens the box by every position. */
  Coordinates(Findings findings, Bbox box) {
    this.findings = findings;
    this.box = box;
  }

  void check(JsonNode geometry, String where) {
    JsonNode coordinates = geometry.path("coordinates");
    String place = where + "/coordinates";
    switch (geometry.path("type").asText()) {
      case "Point" -> checkPosition(coordinates, place);
      case "MultiPoint" -> each(coordinates, place, this::checkPosition);
      case "LineString" -> checkLine(coordinates, place);
      case "MultiLineString" -> each(coordinates, place, this::checkLine);
      case "Polygon" -> checkPolygon(coordinates, place);
      case "MultiPolygon" -> each(coordinates, place, this::checkPolygon);
      default -> findings.add(GeoJsonRule.GEOMETRY_TYPE, where, "type " + geometry.path("type"));
    }
  }

  private boolean each(JsonNode array, String where, BiConsumer<JsonNode, String> check) {
    if (!array.isArray()) {
      findings.add(GeoJsonRule.COORDINATES, where, "not an array: " + array);
      return false;
    }
    for (int i = 0; i < array.size(); i++) {
      check.accept(array.get(i), where + "/" + i);
    }
    return true;
  }

  private void checkPosition(JsonNode position, String where) {
    if (!isPosition(position)) {
      findings.add(GeoJsonRule.POSITION, where, position.toString());
      return;
    }
    double lon = position.get(0).asDouble();
    double lat = position.get(1).asDouble();
    if (Math.abs(lon) > 180 || Math.abs(lat) > 90) {
      findings.add(GeoJsonRule.LON_LAT, where, position.toString());
    }
    box.include(lon, lat);
  }

  private void checkLine(JsonNode line, String where) {
    if (each(line, where, this::checkPosition)) {
      if (line.size() < 2) {
        findings.add(GeoJsonRule.LINE, where, line.size() + " positions");
      }
      checkAntimeridian(line, where);
    }
  }

  private void checkPolygon(JsonNode polygon, String where) {
    if (each(polygon, where, this::checkRing)) {
      if (polygon.isEmpty()) {
        findings.add(GeoJsonRule.COORDINATES, where, "no ring");
      }
      for (int i = 0; i < polygon.size(); i++) {
        checkDirection(polygon.get(i), i == 0, where + "/" + i);
      }
    }
  }

  private void checkRing(JsonNode ring, String where) {
    if (!each(ring, where, this::checkPosition)) {
      return;
    }
    if (ring.size() < 4) {
      findings.add(GeoJsonRule.RING_POSITIONS, where, ring.size() + " positions");
    }
    if (!ring.isEmpty() && !ring.get(0).equals(ring.get(ring.size() - 1))) {
      findings.add(
          GeoJsonRule.RING_CLOSED, where, ring.get(0) + " first, " + ring.get(ring.size() - 1));
    }
    checkAntimeridian(ring, where);
  }

  /** By the shoelace sum about the first position; positive runs counter-clockwise. */
  private void checkDirection(JsonNode ring, boolean exterior, String where) {
    double twice = 0;
    for (int i = 1; i < ring.size(); i++) {
      if (!isPosition(ring.get(0)) || !isPosition(ring.get(i - 1)) || !isPosition(ring.get(i))) {
        return;
      }
      twice += x(ring, i - 1) * y(ring, i) - x(ring, i) * y(ring, i - 1);
    }
    if (exterior ? twice <= 0 : twice >= 0) {
      findings.add(
          GeoJsonRule.RIGHT_HAND_RULE,
          where,
          (exterior ? "exterior ring" : "hole") + " with twice the signed area " + twice);
    }
  }

  private void checkAntimeridian(JsonNode line, String where) {
    for (int i = 1; i < line.size(); i++) {
      if (Math.abs(line.get(i).path(0).asDouble() - line.get(i - 1).path(0).asDouble()) > 180) {
        findings.add(GeoJsonRule.ANTIMERIDIAN, where + "/" + i, line.get(i).toString());
      }
    }
  }

  private static boolean isPosition(JsonNode position) {
    return position.isArray()
        && position.size() == 2
        && position.get(0).isNumber()
        && position.get(1).isNumber();
  }

  private static double x(JsonNode ring, int i) {
    return ring.get(i).get(0).asDouble() - ring.get(0).get(0).asDouble();
  }

  private static double y(JsonNode ring, int i) {
    return ring.get(i).get(1).asDouble() - ring.get(0).get(1).asDouble();
  }
}
