package org.lynchet.formats.csv;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Locale;
import java.util.regex.Pattern;
import org.apache.commons.csv.CSVRecord;
import org.locationtech.jts.geom.Coordinate;
import org.lynchet.formats.Excerpt;
import org.lynchet.formats.FaultList;
import org.lynchet.formats.PlainDecimal;

/** Knows where the columns of vertices are and takes the vertex out of each row. */
final class VertexColumns {
  private static final int ABSENT = -1;
  private static final int MAX_SHOWN = 160;
  private static final Pattern WHOLE = Pattern.compile("\\d{1,9}");

  private final List<String> names;
  private final String file;
  private final FaultList faults;

  private VertexColumns(List<String> names, String file, FaultList faults) {
    this.names = names;
    this.file = file;
    this.faults = faults;
  }

  static VertexColumns of(CSVRecord header, String file, FaultList faults) {
    List<String> names = new ArrayList<>();
    header.forEach(name -> names.add(name.strip().toLowerCase(Locale.ROOT)));
    VertexColumns columns = new VertexColumns(names, file, faults);
    List.of("lon", "lat").forEach(name -> columns.require(name, header));
    for (String name : List.of("lon", "lat", "part", "ring")) {
      if (Collections.frequency(names, name) > 1) {
        faults.add("two columns " + name, file + ", header", "one", "take one of them out");
      }
    }
    return columns;
  }

  private void require(String name, CSVRecord header) {
    if (!names.contains(name)) {
      faults.add(
          "no column " + name + "; it has: " + Excerpt.of(String.join(", ", header), MAX_SHOWN),
          file + ", header",
          "lon, lat, and optionally part, ring",
          "name the columns in the first line");
    }
  }

  /**
   * Adds the row's vertex to its ring.
   *
   * @param line where the row ends in the file, from 1
   */
  void read(CSVRecord row, long line, VertexRings rings) {
    double lon = degrees(row, line, "lon", 180);
    double lat = degrees(row, line, "lat", 90);
    int part = number(row, line, "part");
    int ring = number(row, line, "ring");
    if (Double.isFinite(lon) && Double.isFinite(lat) && part >= 0 && ring >= 0) {
      rings.add(part, ring, new Coordinate(lon, lat));
    }
  }

  /** The value, or NaN after a fault. */
  private double degrees(CSVRecord row, long line, String name, double limit) {
    String text = text(row, names.indexOf(name));
    double value = PlainDecimal.parse(text);
    if (Math.abs(value) <= limit) {
      return value;
    }
    fault(text, line, name, "degrees with a decimal point, -" + limit + " to " + limit);
    return Double.NaN;
  }

  /** The value, 0 if there is no such column, or -1 after a fault. */
  private int number(CSVRecord row, long line, String name) {
    int index = names.indexOf(name);
    if (index == ABSENT) {
      return 0;
    }
    String text = text(row, index);
    if (WHOLE.matcher(text).matches()) {
      return Integer.parseInt(text);
    }
    fault(text, line, name, "a whole number from 0");
    return -1;
  }

  private static String text(CSVRecord row, int index) {
    return index < row.size() ? row.get(index).strip() : "";
  }

  private void fault(String seen, long line, String name, String allowed) {
    String what = seen.isEmpty() ? "no value" : "not allowed: " + Excerpt.of(seen, MAX_SHOWN);
    faults.add(what, file + ", line " + line + ", column " + name, allowed, "mend the value");
  }
}
