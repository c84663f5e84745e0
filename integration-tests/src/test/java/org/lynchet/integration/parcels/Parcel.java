package org.lynchet.integration.parcels;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;
import org.lynchet.integration.witness.coverage.Polygons;
import org.lynchet.prescription.plan.Plan;
import org.lynchet.prescription.plan.PlannedGuidance.Line;
import org.lynchet.prescription.plan.PlannedGuidance.Position;
import org.lynchet.prescription.plan.PlannedGuidance.ThroughPoint;

/**
 * One boundary in files of its own: the boundary, and two management zones that halve it.
 *
 * @param id its name
 * @param folder where the files are
 * @param centre the centre of its extent, longitude (x) and latitude (y) in degrees
 */
record Parcel(String id, Path folder, Coordinate centre) {
  /** The management zones. */
  static final List<String> HALVES = List.of("low", "high");

  private static final ObjectMapper JSON = new ObjectMapper();

  /** Writes a feature of some file into files of its own. */
  static Parcel write(JsonNode feature, Path folder) throws IOException {
    String id = feature.path("properties").path("pid").asText();
    Envelope extent = Polygons.of(feature.path("geometry")).getEnvelopeInternal();
    ObjectNode boundary = collection();
    features(boundary).add(feature);
    JSON.writeValue(folder.resolve(id + ".geojson").toFile(), boundary);
    JSON.writeValue(folder.resolve(id + "-zones.geojson").toFile(), halves(extent));
    return new Parcel(id, folder, extent.centre());
  }

  /** A plan for it; the AB line is given or, by its heading, through the centre. */
  Plan plan(ParcelPlans plans, Line abLine) {
    return plans.plan(folder.toString(), id + ".geojson", id + "-zones.geojson", abLine);
  }

  /** The AB line of a heading through the centre. */
  Line abLine(double headingDegrees) {
    return new ThroughPoint(new Position(centre.x, centre.y), headingDegrees);
  }

  /** Two zones on the sides of a slanted line through the centre, well beyond the extent. */
  private static ObjectNode halves(Envelope extent) {
    Coordinate c = extent.centre();
    double w = extent.getWidth();
    double h = extent.getHeight();
    double west = c.x - w;
    double east = c.x + w;
    double south = c.y - h;
    double north = c.y + h;
    ObjectNode zones = collection();
    addZone(zones, HALVES.get(0), west, south, c.x - w / 3, south, c.x + w / 3, north, west, north);
    addZone(zones, HALVES.get(1), east, south, east, north, c.x + w / 3, north, c.x - w / 3, south);
    return zones;
  }

  private static void addZone(ObjectNode zones, String name, double... lonLats) {
    ObjectNode feature = features(zones).addObject();
    feature.put("type", "Feature");
    feature.putObject("properties").put(ParcelPlans.ZONE, name);
    ObjectNode polygon = feature.putObject("geometry");
    polygon.put("type", "Polygon");
    ArrayNode ring = polygon.putArray("coordinates").addArray();
    for (int i = 0; i <= lonLats.length; i += 2) {
      int at = i % lonLats.length;
      ring.addArray().add(lonLats[at]).add(lonLats[at + 1]);
    }
  }

  private static ObjectNode collection() {
    ObjectNode collection = JSON.createObjectNode();
    collection.put("type", "FeatureCollection");
    collection.putArray("features");
    return collection;
  }

  private static ArrayNode features(ObjectNode collection) {
    return (ArrayNode) collection.get("features");
  }
}
