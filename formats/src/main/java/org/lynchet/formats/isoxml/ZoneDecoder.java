package org.lynchet.formats.isoxml;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.MultiPolygon;
import org.lynchet.formats.Column;
import org.lynchet.formats.FaultList;
import org.lynchet.formats.Feature;
import org.lynchet.formats.XmlElement;

/** Makes rows of a table of the treatment zones of a task. */
final class ZoneDecoder {
  private static final int TEXT = 254;

  /** The columns; those of planting files among them, with their names. */
  static final List<Column> COLUMNS =
      List.of(
          Column.text("task", TEXT),
          Column.text("crop", TEXT),
          Column.text("product", TEXT),
          Column.number("rate", 18, 6),
          Column.text("rate_unit", TEXT));

  /** Crop and product where nothing is planted. */
  private static final String NOTHING = "none";

  private final AreaDecoder areas;
  private final RateDecoder rates;
  private final Map<String, String> productNames = new HashMap<>();

  /** Crops by the id of a product, and by the name of a variety. */
  private final Map<String, String> crops = new HashMap<>();

  ZoneDecoder(TaskTree tree, FaultList faults) {
    this.areas = new AreaDecoder(tree, faults);
    this.rates = new RateDecoder(tree, faults);
    tree.all("PDT").forEach(p -> productNames.put(p.attribute("A"), p.attribute("B")));
    for (XmlElement crop : tree.all("CTP")) {
      for (XmlElement variety : crop.children("CVT")) {
        crop(variety.attribute("C"), crop.attribute("B"));
        crop(variety.attribute("B"), crop.attribute("B"));
      }
    }
  }

  /** Remembers the crop of a product; none if two crops have it. */
  private void crop(String product, String crop) {
    if (!product.isEmpty()) {
      crops.merge(product, crop, (one, other) -> one.equals(other) ? one : "");
    }
  }

  /**
   * One polygon of a zone with one of its values.
   *
   * @param off whether nothing is put on there: no product, rate 0
   */
  record Row(Geometry polygon, boolean off, List<@Nullable Object> values) {
    Feature feature() {
      return new Feature(polygon, values);
    }
  }

  /** The rows of a task, by zone, then by value. */
  List<Row> rows(XmlElement task) {
    List<Row> rows = new ArrayList<>();
    for (XmlElement zone : task.children("TZN")) {
      MultiPolygon area = areas.area(zone, List.of("2"));
      if (!area.isEmpty()) {
        List<XmlElement> values = new ArrayList<>();
        zone.children("PDV").forEach(value -> withNested(value, values));
        if (values.isEmpty()) {
          add(area, false, Arrays.asList(task.attribute("B"), "", "", null, ""), rows);
        }
        values.forEach(value -> add(task, value, area, rows));
      }
    }
    return rows;
  }

  private static void withNested(XmlElement value, List<XmlElement> values) {
    values.add(value);
    value.children("PDV").forEach(nested -> withNested(nested, values));
  }

  private void add(XmlElement task, XmlElement value, MultiPolygon area, List<Row> rows) {
    RateDecoder.Rate rate = rates.rate(value);
    String id = value.attribute("C");
    boolean off = id.isEmpty() && rate.value() == 0;
    String product = off ? NOTHING : productNames.getOrDefault(id, id);
    String crop = off ? NOTHING : crops.getOrDefault(id, crops.getOrDefault(product, ""));
    add(area, off, List.of(task.attribute("B"), crop, product, rate.value(), rate.unit()), rows);
  }

  private static void add(
      MultiPolygon area, boolean off, List<@Nullable Object> values, List<Row> rows) {
    for (int i = 0; i < area.getNumGeometries(); i++) {
      rows.add(new Row(area.getGeometryN(i), off, values));
    }
  }
}
