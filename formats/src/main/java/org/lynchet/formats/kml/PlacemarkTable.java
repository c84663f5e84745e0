package org.lynchet.formats.kml;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.lynchet.formats.Column;
import org.lynchet.formats.Excerpt;
import org.lynchet.formats.FaultList;
import org.lynchet.formats.Feature;
import org.lynchet.formats.PlainDecimal;
import org.lynchet.formats.XmlElement;

/** Makes columns and features of placemarks. */
final class PlacemarkTable {
  private static final String NAME = "name";

  /** More columns than any map of a field has. */
  private static final int MOST_COLUMNS = 500;

  /** A table has room for each name in each placemark, whether it is there or not. */
  private static final int MOST_VALUES = 10_000_000;

  private static final int LONGEST_NUMBER = 40;

  private final XmlElement root;
  private final String place;
  private final FaultList faults;
  private final GeometryParser geometries;
  private List<Column> columns = List.of();
  private boolean labelled;

  PlacemarkTable(XmlElement root, String place, FaultList faults) {
    this.root = root;
    this.place = place;
    this.faults = faults;
    this.geometries = new GeometryParser(place, faults);
  }

  /** The columns of some placemarks; to be called before their features are asked for. */
  List<Column> columns(List<XmlElement> placemarks) {
    Set<String> schemas = new LinkedHashSet<>();
    Set<String> names = new LinkedHashSet<>(List.of(NAME));
    for (XmlElement placemark : placemarks) {
      String schema = "";
      for (XmlElement data : placemark.children("ExtendedData")) {
        schema = data.findChild("SchemaData").map(s -> s.attribute("schemaUrl")).orElse(schema);
        names.addAll(values(data).keySet());
      }
      schemas.add(schema.replaceFirst("^#", ""));
    }
    List<Column> known =
        schemas.size() == 1 ? schema(schemas.iterator().next()) : new ArrayList<>();
    labelled = known.isEmpty(); // a schema's column called name is no label
    columns = labelled ? names.stream().map(n -> Column.text(n, 254)).toList() : known;
    if (columns.size() > MOST_COLUMNS || (long) columns.size() * placemarks.size() > MOST_VALUES) {
      faults.add(
          columns.size() + " different names of values in " + placemarks.size() + " placemarks",
          place,
          "at most " + MOST_COLUMNS + " names, and " + MOST_VALUES + " values",
          "export the field's outline only");
      columns = List.of();
    }
    return columns;
  }

  private List<Column> schema(String id) {
    List<Column> fields = new ArrayList<>();
    Set<String> seen = new LinkedHashSet<>();
    List<XmlElement> documents = new ArrayList<>(List.of(root));
    documents.addAll(root.children("Document"));
    for (XmlElement document : documents) {
      for (XmlElement schema : document.children("Schema")) {
        if (!id.isEmpty() && schema.attribute("id").equals(id)) {
          for (XmlElement field : schema.children("SimpleField")) {
            if (seen.add(field.attribute("name"))) {
              fields.add(KmlType.column(field.attribute("name"), field.attribute("type")));
            }
          }
        }
      }
    }
    return fields;
  }

  /** The features of the placemarks, in order. */
  List<Feature> features(List<XmlElement> placemarks) {
    List<Feature> features = new ArrayList<>();
    for (XmlElement placemark : placemarks) {
      features.add(new Feature(geometries.geometry(placemark), values(placemark, columns)));
    }
    return features;
  }

  private List<@Nullable Object> values(XmlElement placemark, List<Column> wanted) {
    Map<String, String> texts = new HashMap<>();
    if (labelled) {
      placemark.findChild(NAME).ifPresent(name -> texts.put(NAME, name.text()));
    }
    placemark.children("ExtendedData").forEach(data -> texts.putAll(values(data)));
    List<@Nullable Object> values = new ArrayList<>();
    for (Column column : wanted) {
      String text = texts.get(column.name());
      values.add(text == null ? null : value(column, text, placemark));
    }
    return values;
  }

  private @Nullable Object value(Column column, String text, XmlElement placemark) {
    if (column.kind() == Column.Kind.TEXT) {
      return text;
    }
    if (text.isEmpty()) {
      return null;
    }
    if (column.kind() == Column.Kind.FLAG && text.matches("0|1|true|false")) {
      return text.equals("1") || text.equals("true");
    }
    double number = PlainDecimal.parse(text);
    if (column.kind() == Column.Kind.NUMBER && !Double.isNaN(number)) {
      return number;
    }
    faults.add(
        "the value of " + column.name() + " is '" + Excerpt.of(text, LONGEST_NUMBER) + "'",
        place + " line " + placemark.line(),
        column.kind() == Column.Kind.FLAG ? "0 or 1" : "a number",
        "correct the value or its type in the schema");
    return null;
  }

  /** Names and texts of values, of a schema's or without. */
  private static Map<String, String> values(XmlElement data) {
    Map<String, String> values = new LinkedHashMap<>();
    for (XmlElement free : data.children("Data")) {
      values.put(free.attribute("name"), free.findChild("value").map(XmlElement::text).orElse(""));
    }
    for (XmlElement schema : data.children("SchemaData")) {
      schema.children("SimpleData").forEach(v -> values.put(v.attribute("name"), v.text()));
    }
    return values;
  }
}
