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
import org.lynchet.prescription.fault.Faults;
import org.lynchet.prescription.intake.FieldOutline;
import org.lynchet.prescription.plan.HandoffChoices.Format;

/** Tells what of a fitted table a format cannot hold. */
final class FormatLimits {
  private static final Set<String> ONE_KIND =
      Set.of("Point", "LineString", "Polygon", "MultiLineString", "MultiPolygon");

  /** dBASE III: columns; bytes of a text; Java: bytes of an array. */
  private static final int MOST_COLUMNS = 128;

  private static final int LONGEST_TEXT = 254;
  private static final long LARGEST_FILE = 2_000_000_000;

  /** SQLITE_MAX_COLUMN is 2000; key and geometry take two. */
  private static final int MOST_LAYER_COLUMNS = 1998;

  /** Names that SQLite, GeoPackage and its R-trees keep for their own tables. */
  private static final List<String> KEPT = List.of("sqlite_", "gpkg_", "rtree_");

  private static final String OTHER = "choose another format, or take it out";

  private final Format format;
  private final FeatureTable table;
  private final String file;
  private final Faults faults;
  private final FeatureFaults features = new FeatureFaults();

  private FormatLimits(Format format, FeatureTable table, String file, Faults faults) {
    this.format = format;
    this.table = table;
    this.file = file;
    this.faults = faults;
  }

  /**
   * Adds a fault for everything that a format cannot hold.
   *
   * @param table fitted to the format
   * @param file what the table is called in faults
   */
  static void check(Format format, FeatureTable table, String file, Faults faults) {
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
    int most =
        switch (format) {
          case SHAPEFILE -> MOST_COLUMNS;
          case GEOPACKAGE -> MOST_LAYER_COLUMNS;
          default -> Integer.MAX_VALUE;
        };
    if (columns > most) {
      fault(columns + " columns", "at most " + most + " columns", "leave some out");
    }
    long rowBytes = table.columns().stream().mapToLong(Column::width).sum();
    if (format == Format.SHAPEFILE && rowBytes * table.features().size() > LARGEST_FILE) {
      fault("more than 2 GB of values", "files of at most 2 GB", "leave some columns out");
    }
    if (format != Format.SHAPEFILE) {
      Stream.concat(Stream.of(table.name()), table.columns().stream().map(Column::name))
          .filter(name -> BadCharacter.in(name, format) != null)
          .forEach(
              name ->
                  fault("a name with " + BadCharacter.in(name, format), "names of letters", OTHER));
    }
    String name = table.name().toLowerCase(Locale.ROOT);
    if (format == Format.GEOPACKAGE
        && (name.isBlank() || KEPT.stream().anyMatch(name::startsWith))) {
      fault(
          "no layer can be called '" + table.name() + "'",
          "a name that does not begin with " + String.join(", ", KEPT),
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
      if (format == Format.SHAPEFILE) {
        features.add(i, "no place", "a geometry in each feature", OTHER);
      }
      return;
    }
    boolean plain = format == Format.SHAPEFILE || format == Format.GEOJSON;
    String kind = geometry.getGeometryType();
    if (plain && !ONE_KIND.contains(kind)) {
      features.add(
          i, "a " + kind, "points, lines and polygons, and several of the last two", OTHER);
    } else if (format == Format.SHAPEFILE && geometry.getDimension() != dimension()) {
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
    for (int c = 0; c < table.columns().size(); c++) {
      if (table.features().get(i).values().get(c) instanceof String text) {
        String column = " in column " + table.columns().get(c).name();
        String bad = BadCharacter.in(text, format);
        if (bad != null) {
          features.add(i, bad + column, "texts of characters that this format has", OTHER);
        } else if (format == Format.SHAPEFILE
            && text.getBytes(StandardCharsets.UTF_8).length > LONGEST_TEXT) {
          features.add(
              i,
              "a text of more than " + LONGEST_TEXT + " bytes" + column,
              "at most " + LONGEST_TEXT + " bytes of UTF-8",
              "choose another format, or make it shorter");
        }
      }
    }
  }

  private void fault(String what, String allowed, String next) {
    faults.add(what, file, allowed, next);
  }
}
