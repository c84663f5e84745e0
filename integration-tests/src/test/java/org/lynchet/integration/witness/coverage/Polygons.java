package org.lynchet.integration.witness.coverage;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.LinearRing;
import org.locationtech.jts.geom.Polygon;

/**
 * Reads the polygons of a GeoJSON file that {@code GeoJsonText} found nothing in.
 *
 * <p>Nothing is repaired and no order is changed.
 */
public final class Polygons {
  private static final GeometryFactory FACTORY = new GeometryFactory();

  private Polygons() {}

  /** The features of a FeatureCollection, as they stand in the file. */
  public static List<JsonNode> features(Path file) throws IOException {
    List<JsonNode> features = new ArrayList<>();
    new ObjectMapper().readTree(file.toFile()).path("features").forEach(features::add);
    return features;
  }

  /** The geometry of each feature of a file. */
  public static List<Geometry> read(Path file) throws IOException {
    return features(file).stream().map(feature -> of(feature.path("geometry"))).toList();
  }

  /**
   * One geometry; what is no Polygon or MultiPolygon becomes an empty polygon, which the witness
   * then names.
   */
  public static Geometry of(JsonNode geometry) {
    JsonNode coordinates = geometry.path("coordinates");
    return switch (geometry.path("type").asText()) {
      case "Polygon" -> polygon(coordinates);
      case "MultiPolygon" -> {
        List<Polygon> parts = new ArrayList<>();
        coordinates.forEach(part -> parts.add(polygon(part)));
        yield FACTORY.createMultiPolygon(parts.toArray(new Polygon[0]));
      }
      default -> FACTORY.createPolygon();
    };
  }

  private static Polygon polygon(JsonNode rings) {
    List<LinearRing> linear = new ArrayList<>();
    rings.forEach(ring -> linear.add(ring(ring)));
    return FACTORY.createPolygon(
        linear.get(0), linear.subList(1, linear.size()).toArray(new LinearRing[0]));
  }

  private static LinearRing ring(JsonNode positions) {
    List<Coordinate> points = new ArrayList<>();
    positions.forEach(p -> points.add(new Coordinate(p.get(0).asDouble(), p.get(1).asDouble())));
    return FACTORY.createLinearRing(points.toArray(new Coordinate[0]));
  }
}
