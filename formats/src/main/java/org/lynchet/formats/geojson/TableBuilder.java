package org.lynchet.formats.geojson;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.locationtech.jts.geom.Geometry;
import org.lynchet.formats.DeclaredCrs;
import org.lynchet.formats.Feature;
import org.lynchet.formats.FeatureTable;

/** Makes a table of features whose properties may differ. */
final class TableBuilder {
  /** Keeps a small file with ever new names from becoming a huge table of nothing. */
  private static final long MAX_VALUES = 20_000_000;

  private final JsonFaults faults;
  private final GeometryBuilder geometries;
  private final Map<String, ColumnKind> columns = new LinkedHashMap<>();
  private final List<GeoObject> features = new ArrayList<>();
  private final List<Geometry> shapes = new ArrayList<>();

  TableBuilder(JsonFaults faults) {
    this.faults = faults;
    this.geometries = new GeometryBuilder(faults);
  }

  /** Adds a feature, or a geometry without properties. */
  void add(GeoObject object) {
    boolean feature = "Feature".equals(object.type);
    shapes.add(geometries.build(feature ? object.geometry : object));
    features.add(object);
    if (feature) {
      object.properties.forEach(
          (name, value) -> columns.computeIfAbsent(name, n -> new ColumnKind()).see(value));
    }
    if ((long) columns.size() * features.size() > MAX_VALUES && faults.list().isEmpty()) {
      faults.add(
          columns.size() + " different properties in " + features.size() + " features",
          object.spot,
          object.path,
          "at most " + MAX_VALUES + " values in a table");
    }
  }

  boolean isWithoutGeometry() {
    return faults.list().isEmpty() && shapes.stream().allMatch(Geometry::isEmpty);
  }

  FeatureTable build(String name, DeclaredCrs crs) {
    List<Feature> rows = new ArrayList<>(features.size());
    for (int i = 0; i < features.size(); i++) {
      rows.add(new Feature(shapes.get(i), values(features.get(i))));
    }
    return new FeatureTable(
        name,
        crs,
        columns.entrySet().stream().map(e -> e.getValue().column(e.getKey())).toList(),
        rows);
  }

  private List<@Nullable Object> values(GeoObject feature) {
    List<@Nullable Object> values = new ArrayList<>(columns.size());
    columns.forEach((name, kind) -> values.add(kind.fit(feature.properties.get(name))));
    return values;
  }
}
