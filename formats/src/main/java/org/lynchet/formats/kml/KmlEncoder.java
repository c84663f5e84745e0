package org.lynchet.formats.kml;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import org.lynchet.formats.Column;
import org.lynchet.formats.DeclaredCrs;
import org.lynchet.formats.Feature;
import org.lynchet.formats.FeatureTable;
import org.lynchet.formats.PlainDecimal;
import org.lynchet.formats.XmlOutput;

/** Writes tables as one document. */
final class KmlEncoder {
  private static final String NAMESPACE = "http://www.opengis.net/kml/2.2";
  private static final int NAMING_VALUES = 4;

  /**
   * Fills as aabbggrr, half transparent: the colours of Okabe and Ito (2008) that the colour-blind
   * can tell apart.
   */
  private static final List<String> FILLS =
      List.of("80009fe6", "80e9b456", "80739e00", "8042e4f0", "80b27200", "80005ed5", "80a779cc");

  private static final String LINE = "ff000000";

  private final List<FeatureTable> tables;
  private final XmlOutput out = new XmlOutput();
  private final KmlGeometry geometries = new KmlGeometry(out);

  /** The number of the style of a first value. */
  private final Map<String, Integer> styles = new LinkedHashMap<>();

  KmlEncoder(List<FeatureTable> tables) {
    this.tables = tables;
    for (FeatureTable table : tables) {
      if (!table.crs().equals(DeclaredCrs.LON_LAT)) {
        throw new IllegalArgumentException("not in longitude and latitude: " + table.crs().kind());
      }
      for (Feature feature : table.features()) {
        styles.computeIfAbsent(first(feature), value -> styles.size());
      }
    }
  }

  byte[] encode() {
    out.start("kml").attribute("xmlns", NAMESPACE).start("Document");
    for (int i = 0; i < Math.min(styles.size(), FILLS.size()); i++) {
      style(i);
    }
    for (int i = 0; i < tables.size(); i++) {
      schema(tables.get(i), "schema" + (i + 1));
    }
    for (int i = 0; i < tables.size(); i++) {
      folder(tables.get(i), "schema" + (i + 1));
    }
    return out.end().end().toBytes();
  }

  private void style(int number) {
    out.start("Style").attribute("id", "style" + number);
    out.start("LineStyle").element("color", LINE).element("width", "1").end();
    out.start("PolyStyle").element("color", FILLS.get(number)).end().end();
  }

  private void schema(FeatureTable table, String id) {
    out.start("Schema").attribute("name", table.name()).attribute("id", id);
    for (Column column : table.columns()) {
      out.start("SimpleField").attribute("name", column.name());
      out.attribute("type", KmlType.of(column.kind())).end();
    }
    out.end();
  }

  private void folder(FeatureTable table, String schema) {
    out.start("Folder").element("name", table.name());
    for (Feature feature : table.features()) {
      placemark(table, feature, schema);
    }
    out.end();
  }

  private void placemark(FeatureTable table, Feature feature, String schema) {
    out.start("Placemark").element("name", name(feature));
    int style = Objects.requireNonNull(styles.get(first(feature))) % FILLS.size();
    out.element("styleUrl", "#style" + style);
    out.start("ExtendedData").start("SchemaData").attribute("schemaUrl", "#" + schema);
    for (int i = 0; i < table.columns().size(); i++) {
      Object value = feature.values().get(i);
      if (value != null) {
        out.element("SimpleData", "name", table.columns().get(i).name(), text(value));
      }
    }
    out.end().end();
    geometries.write(feature.geometry());
    out.end();
  }

  private static String name(Feature feature) {
    return feature.values().stream()
        .limit(NAMING_VALUES)
        .filter(Objects::nonNull)
        .map(KmlEncoder::text)
        .collect(Collectors.joining(" "));
  }

  private static String first(Feature feature) {
    return feature.values().isEmpty() ? "" : text(feature.values().get(0));
  }

  private static String text(@Nullable Object value) {
    if (value instanceof Double number) {
      return PlainDecimal.of(number);
    }
    if (value instanceof Boolean flag) {
      return flag ? "1" : "0";
    }
    return value == null ? "" : value.toString();
  }
}
