package org.lynchet.formats.geojson;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonFactoryBuilder;
import com.fasterxml.jackson.core.JsonGenerator;
import com.fasterxml.jackson.core.json.JsonWriteFeature;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.lynchet.formats.Column;
import org.lynchet.formats.DeclaredCrs;
import org.lynchet.formats.Feature;
import org.lynchet.formats.FeatureTable;
import org.lynchet.formats.FeatureWriter;
import org.lynchet.formats.PlainDecimal;

/** Writes a table as a feature collection, whole in memory first. */
final class GeoJsonWriter implements FeatureWriter {
  private static final JsonFactory FACTORY =
      new JsonFactoryBuilder()
          .rootValueSeparator("")
          .enable(JsonWriteFeature.COMBINE_UNICODE_SURROGATES_IN_UTF8)
          .build();

  @Override
  public void write(FeatureTable table, Path file) throws IOException {
    if (!table.crs().equals(DeclaredCrs.LON_LAT)) {
      throw new IllegalArgumentException("not in longitude and latitude: " + table.crs().kind());
    }
    Files.write(file, encode(table));
  }

  /** Writes every feature as a JSON text of its own, with the collection around them by hand. */
  private static byte[] encode(FeatureTable table) throws IOException {
    table.columns().forEach(c -> whole(c.name()));
    ByteArrayOutputStream bytes = new ByteArrayOutputStream(1 << 14);
    try (JsonGenerator out = FACTORY.createGenerator(bytes)) {
      out.writeRaw("{\"type\":\"FeatureCollection\",\"name\":");
      out.writeString(whole(table.name()));
      out.writeRaw(",\"features\":[");
      GeometryEncoder geometries = new GeometryEncoder(out);
      String separator = "\n";
      for (Feature feature : table.features()) {
        out.writeRaw(separator);
        write(out, geometries, table.columns(), feature);
        separator = ",\n";
      }
      out.writeRaw("\n]}\n");
    }
    return bytes.toByteArray();
  }

  private static void write(
      JsonGenerator out, GeometryEncoder geometries, List<Column> columns, Feature feature)
      throws IOException {
    out.writeStartObject();
    out.writeStringField("type", "Feature");
    out.writeObjectFieldStart("properties");
    for (int i = 0; i < columns.size(); i++) {
      out.writeFieldName(columns.get(i).name());
      writeValue(out, columns.get(i), feature.values().get(i));
    }
    out.writeEndObject();
    out.writeFieldName("geometry");
    geometries.write(feature.geometry());
    out.writeEndObject();
  }

  private static void writeValue(JsonGenerator out, Column column, @Nullable Object value)
      throws IOException {
    if (value == null) {
      out.writeNull();
    } else if (column.kind() == Column.Kind.NUMBER && value instanceof Number number) {
      out.writeNumber(number(number.doubleValue()));
    } else if (column.kind() == Column.Kind.FLAG && value instanceof Boolean flag) {
      out.writeBoolean(flag);
    } else if (column.kind() == Column.Kind.TEXT && value instanceof String text) {
      out.writeString(whole(text));
    } else {
      throw new IllegalArgumentException("no value for " + column + ": " + value);
    }
  }

  /** Whole numbers that long are read as keys, whose every digit counts: this is none of them. */
  private static String number(double value) {
    String plain = PlainDecimal.of(value);
    return Math.abs(value) >= ValueParser.EXACT ? plain + ".0" : plain;
  }

  /** Refuses text with half a character, which UTF-8 can't hold. */
  private static String whole(String text) {
    for (int i = 0; i < text.length(); i += Character.charCount(text.codePointAt(i))) {
      if (Character.getType(text.codePointAt(i)) == Character.SURROGATE) {
        throw new IllegalArgumentException("half a character at " + i + " of a text");
      }
    }
    return text;
  }
}
