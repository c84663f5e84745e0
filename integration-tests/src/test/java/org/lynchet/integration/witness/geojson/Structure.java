package org.lynchet.integration.witness.geojson;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.List;
import org.lynchet.integration.witness.Findings;

/** Checks the objects around the geometries: collection, features, members. */
final class Structure {
  private static final List<String> NOT_IN_COLLECTION =
      List.of("coordinates", "geometries", "geometry", "properties");
  private static final List<String> NOT_IN_FEATURE =
      List.of("coordinates", "geometries", "features");
  private static final List<String> NOT_IN_GEOMETRY = List.of("geometry", "properties", "features");

  private final Findings findings;

  private Structure(Findings findings) {
    this.findings = findings;
  }

  static void check(JsonNode root, String name, Findings findings) {
    new Structure(findings).checkCollection(root, name);
  }

  private void checkCollection(JsonNode root, String where) {
    if (!root.path("type").asText().equals("FeatureCollection")
        || !root.path("features").isArray()) {
      findings.add(GeoJsonRule.FEATURE_COLLECTION, where, "type " + root.path("type"));
      return;
    }
    checkMembers(root, where, NOT_IN_COLLECTION);
    Bbox box = new Bbox();
    for (int i = 0; i < root.get("features").size(); i++) {
      box.include(checkFeature(root.get("features").get(i), where + " /features/" + i));
    }
    box.check(root, where, findings);
  }

  private Bbox checkFeature(JsonNode feature, String where) {
    Bbox box = new Bbox();
    if (!feature.path("type").asText().equals("Feature")) {
      findings.add(GeoJsonRule.FEATURE, where, "type " + feature.path("type"));
      return box;
    }
    checkMembers(feature, where, NOT_IN_FEATURE);
    JsonNode properties = feature.path("properties");
    if (!properties.isObject() && !properties.isNull()) {
      findings.add(GeoJsonRule.PROPERTIES_PRESENT, where, "properties " + properties);
    }
    if (feature.has("id") && !feature.get("id").isTextual() && !feature.get("id").isNumber()) {
      findings.add(GeoJsonRule.ID, where, "id " + feature.get("id"));
    }
    JsonNode geometry = feature.path("geometry");
    if (geometry.isObject()) {
      checkGeometry(geometry, where + "/geometry", box);
    } else if (!geometry.isNull()) {
      findings.add(GeoJsonRule.GEOMETRY_PRESENT, where, "geometry " + geometry);
    }
    box.check(feature, where, findings);
    return box;
  }

  private void checkGeometry(JsonNode geometry, String where, Bbox box) {
    checkMembers(geometry, where, NOT_IN_GEOMETRY);
    Bbox own = new Bbox();
    if (geometry.path("type").asText().equals("GeometryCollection")) {
      checkParts(geometry, where, own);
    } else {
      new Coordinates(findings, own).check(geometry, where);
    }
    own.check(geometry, where, findings);
    box.include(own);
  }

  private void checkParts(JsonNode collection, String where, Bbox box) {
    JsonNode parts = collection.path("geometries");
    if (!parts.isArray()) {
      findings.add(GeoJsonRule.COORDINATES, where, "geometries " + parts);
    }
    for (int i = 0; i < parts.size(); i++) {
      checkGeometry(parts.get(i), where + "/geometries/" + i, box);
    }
  }

  private void checkMembers(JsonNode object, String where, List<String> foreign) {
    for (String member : foreign) {
      if (object.has(member)) {
        findings.add(GeoJsonRule.FOREIGN, where, "has " + member);
      }
    }
    if (object.has("crs")) {
      findings.add(GeoJsonRule.CRS, where, "has crs");
    }
  }
}
