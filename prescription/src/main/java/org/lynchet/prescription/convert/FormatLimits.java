package org.lynchet.prescription.convert;

import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.stream.Stream;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.LinearRing;
import org.locationtech.jts.geom.Polygon;
import org.lynchet.formats.Column;
import org.lynchet.formats.FeatureTable;
import org.lynchet.formats.TableLimits;
import org.lynchet.formats.TableLimits.FixedWidth;
import org.lynchet.formats.TableLimits.Kinds;
import org.lynchet.prescription.fault.Faults;
import org.lynchet.prescription.intake.FieldOutline;

/** Tells what of a fitted table a format cannot hold. */
final class FormatLimits {
  private static final Set<String> ONE_KIND =
      Set.of("Point", "LineString", "Polygon", "MultiLineString", "MultiPolygon");

  private static final String OTHER = "choose another format, or take it out";

  private final TableLimits limits;
  private final FeatureTable table;
  private final String file;
  private final Faults faults;
  private final FeatureFaults features = new FeatureFaults();

  private FormatLimits(TableLimits limits, FeatureTable table, String file, Faults faults) {
    this.limits = limits;
    this.table = table;
    this.file = file;
    this.faults = faults;
  }

  /**
   * Adds a fault for everything that a format cannot hold.
   *
   * @param format what the format holds
   * @param table fitted to the format
   * @param file what the table is called in faults
   */
  static void check(TableLimits format, FeatureTable table, String file, Faults faults) {
    FormatLimits limits = new FormatLimits(format, table, file, faults);
    limits.checkTable();
    for (int i = 0; i < table.features().size(); i++) {
      limits.checkPlaces(i, table.features().get(i).geometry());
      limits.checkKind(i, table.features().get(i).geometry());
      limits.checkTexts(i);
    }
    limits.features.tell(file, faults);
  }

  private void checkTable() {
    int columns = table.columns().size();
    if (columns > limits.columns()) {
      fault(columns + " columns", "at most " + limits.columns() + " columns", "leave some out");
    }
    long rowBytes = table.columns().stream().mapToLong(Column::width).sum();
    FixedWidth room = limits.fixedWidth();
    if (room != null && rowBytes * table.features().size() > room.fileBytes()) {
      String most = room.fileBytes() / 1_000_000_000 + " GB";
      fault("more than " + most + " of values", "files of at most " + most, "leave columns out");
    }
    if (room == null) {
      Stream.concat(Stream.of(table.name()), table.columns().stream().map(Column::name))
          .filter(name -> limits.characters().missing(name) != null)
          .forEach(
              name ->
                  fault(
                      "a name with " + limits.characters().missing(name),
                      "names of letters",
                      OTHER));
    }
    String name = table.name().toLowerCase(Locale.ROOT);
    List<String> kept = limits.keptNames();
    if (!kept.isEmpty() && (name.isBlank() || kept.stream().anyMatch(name::startsWith))) {
      fault(
          "no layer can be called '" + table.name() + "'",
          "a name that does not begin with " + String.join(", ", kept),
          "name the file otherwise");
    }
  }

  private void checkPlaces(int i, Geometry geometry) {
    if (!FieldOutline.isWithin(geometry, 90)) {
      features.add(
          i,
          "a vertex outside the earth",
          "longitude -180 to 180, latitude -90 to 90",
          "check the coordinate system of the file, and that x is longitude");
    }
  }

  private void checkKind(int i, Geometry geometry) {
    if (geometry.isEmpty()) {
      if (limits.kinds() == Kinds.ONE_IN_ALL) {
        features.add(i, "no place", "a geometry in each feature", OTHER);
      }
      return;
    }
    String kind = geometry.getGeometryType();
    if (limits.kinds() != Kinds.ANY && !ONE_KIND.contains(kind)) {
      features.add(
          i, "a " + kind, "points, lines and polygons, and several of the last two", OTHER);
    } else if (limits.kinds() == Kinds.ONE_IN_ALL && geometry.getDimension() != dimension()) {
      features.add(
          i, "a " + kind + " among others", "only points, only lines or only polygons", OTHER);
    }
    for (int n = 0; n < geometry.getNumGeometries(); n++) {
      checkPart(i, geometry.getGeometryN(n));
    }
  }

  private int dimension() {
    return table.features().get(0).geometry().getDimension();
  }

  private void checkPart(int i, Geometry part) {
    if (part.isEmpty()) {
      features.add(i, "a part without a place", "parts with vertices", OTHER);
    } else if (part instanceof Polygon polygon) {
      boolean tooShort = isShort(polygon.getExteriorRing());
      for (int hole = 0; hole < polygon.getNumInteriorRing(); hole++) {
        tooShort |= isShort(polygon.getInteriorRingN(hole));
      }
      if (tooShort) {
        features.add(
            i, "a ring of less than 3 vertices", "at least 3 vertices", "draw the outline again");
      }
    }
  }

  /** The first vertex is there again as the last. */
  private static boolean isShort(LinearRing ring) {
    return ring.getNumPoints() < 4;
  }

  private void checkTexts(int i) {
    FixedWidth room = limits.fixedWidth();
    for (int c = 0; c < table.columns().size(); c++) {
      if (table.features().get(i).values().get(c) instanceof String text) {
        String column = " in column " + table.columns().get(c).name();
        String bad = limits.characters().missing(text);
        if (bad != null) {
          features.add(i, bad + column, "texts of characters that this format has", OTHER);
        } else if (room != null
            && text.getBytes(StandardCharsets.UTF_8).length > room.textBytes()) {
          features.add(
              i,
              "a text of more than " + room.textBytes() + " bytes" + column,
              "at most " + room.textBytes() + " bytes of UTF-8",
              "choose another format, or make it shorter");
        }
      }
    }
  }

  private void fault(String what, String allowed, String next) {
    faults.add(what, file, allowed, next);
  }
}
