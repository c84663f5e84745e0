package org.lynchet.formats.geojson;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/** One GeoJSON object as it stands in the file, with the members that mean something. */
final class GeoObject {
  final String path;
  final JsonSpot spot;
  @Nullable String type;
  @Nullable Nest coordinates;
  @Nullable List<GeoObject> geometries;
  @Nullable List<GeoObject> features;

  /** Null if the member is missing or null. */
  @Nullable GeoObject geometry;

  final Map<String, @Nullable Object> properties = new LinkedHashMap<>();

  GeoObject(String path, JsonSpot spot) {
    this.path = path;
    this.spot = spot;
  }

  /** The path of a member of this object. */
  String member(String name) {
    return path.isEmpty() ? name : path + "." + name;
  }
}
