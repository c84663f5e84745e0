package org.lynchet.formats.geojson;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonFactoryBuilder;
import com.fasterxml.jackson.core.JsonLocation;
import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.JsonToken;
import com.fasterxml.jackson.core.StreamReadConstraints;
import com.fasterxml.jackson.core.StreamReadFeature;
import com.fasterxml.jackson.core.io.JsonEOFException;
import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.lynchet.formats.FeatureReader;
import org.lynchet.formats.FeatureTable;
import org.lynchet.formats.FormatException;
import org.lynchet.formats.InputFile;

/** Reads a GeoJSON file: first its objects as they stand, then what they mean. */
final class GeoJsonReader implements FeatureReader {
  /** Deeper than any collection of collections; keeps the stack safe. */
  private static final int MAX_DEPTH = 64;

  private static final JsonFactory FACTORY =
      new JsonFactoryBuilder()
          .streamReadConstraints(StreamReadConstraints.builder().maxNestingDepth(MAX_DEPTH).build())
          .enable(StreamReadFeature.STRICT_DUPLICATE_DETECTION)
          .enable(StreamReadFeature.USE_FAST_DOUBLE_PARSER)
          .build();

  @Override
  public FeatureTable read(Path file) throws FormatException {
    byte[] bytes = InputFile.read(file);
    JsonFaults faults = new JsonFaults(file.toString());
    ObjectParser objects = null;
    GeoObject top = null;
    try (JsonParser parser = FACTORY.createParser(bytes)) {
      objects = new ObjectParser(parser, faults);
      top = parse(parser, objects, faults);
    } catch (IOException e) {
      faults.add("it cannot be decoded (" + e + ")", new JsonSpot(1, 1), "", "JSON in UTF-8");
    }
    List<GeoObject> features = features(top, faults);
    TableBuilder table = new TableBuilder(faults);
    features.forEach(table::add);
    if (top != null && table.isWithoutGeometry()) {
      faults.add("no geometry in it", top.spot, top.path, "at least one geometry");
    }
    faults.list().throwIfAny();
    if (objects == null) {
      throw new IllegalStateException("neither read nor refused");
    }
    return table.build(InputFile.baseName(file), objects.crs());
  }

  private static @Nullable GeoObject parse(
      JsonParser parser, ObjectParser objects, JsonFaults faults) throws IOException {
    try {
      return parseTop(parser, objects, faults);
    } catch (JsonProcessingException e) {
      JsonLocation location = e.getLocation();
      JsonSpot spot = JsonSpot.of(location == null ? parser.currentLocation() : location);
      faults.add(what(e), spot, "", "one JSON text in UTF-8");
      return null;
    }
  }

  private static @Nullable GeoObject parseTop(
      JsonParser parser, ObjectParser objects, JsonFaults faults) throws IOException {
    JsonToken first = parser.nextToken();
    if (first != JsonToken.START_OBJECT) {
      faults.add(
          first == null ? "it is empty" : "it begins with " + TokenName.of(first),
          JsonSpot.of(parser.currentTokenLocation()),
          "",
          "a JSON object: a feature collection, a feature or a geometry");
      return null;
    }
    GeoObject top = objects.parse("");
    if (parser.nextToken() != null) {
      faults.add(
          "more after its end", JsonSpot.of(parser.currentTokenLocation()), "", "one JSON object");
    }
    return top;
  }

  private static String what(JsonProcessingException e) {
    return e instanceof JsonEOFException
        ? "it ends before its JSON does"
        : "not JSON: " + e.getOriginalMessage();
  }

  /** The features, or the geometry as the only feature. */
  private static List<GeoObject> features(@Nullable GeoObject top, JsonFaults faults) {
    if (top == null) {
      return List.of();
    }
    if (!"FeatureCollection".equals(top.type)) {
      return List.of(top);
    }
    if (top.features == null) {
      faults.add("no features in it", top.spot, top.path, "an array called features");
      return List.of();
    }
    return top.features;
  }
}
