package org.lynchet.formats;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.Size;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.LinearRing;
import org.locationtech.jts.geom.Polygon;
import org.lynchet.formats.geojson.GeoJson;
import org.lynchet.formats.shapefile.Shapefile;

/** Writes random tables and reads them back: nothing is lost but digits beyond the format's. */
class RoundTripTest {
  private static final GeometryFactory FACTORY = new GeometryFactory();
  private static final List<Column> COLUMNS =
      List.of(Column.text("NAME", 254), Column.number("RATE", 20, 3), Column.flag("PARTIAL"));

  @Property(seed = "1")
  void shapefile(@ForAll("features") @Size(min = 1, max = 8) List<Feature> features)
      throws Exception {
    Path folder = Files.createTempDirectory("round-trip");
    try {
      Path file = folder.resolve("a.shp");
      FeatureTable table = Samples.table(COLUMNS, features.toArray(new Feature[0]));
      Shapefile.writer().write(table, file);
      FeatureTable found = Shapefile.reader().read(file);
      assertThat(found.columns()).isEqualTo(COLUMNS);
      assertThat(found.features()).hasSameSizeAs(features);
      for (int i = 0; i < features.size(); i++) {
        Feature before = features.get(i);
        Feature after = found.features().get(i);
        assertThat(after.geometry().norm().equalsExact(before.geometry().norm())).isTrue();
        assertThat(after.values())
            .isEqualTo(
                List.of(
                    text(before).stripTrailing(), rounded(number(before)), before.values().get(2)));
      }
    } finally {
      delete(folder);
    }
  }

  @Property(seed = "2")
  void geoJson(@ForAll("features") @Size(min = 1, max = 8) List<Feature> features)
      throws Exception {
    Path file = Files.createTempFile("round-trip", ".geojson");
    try {
      GeoJson.writer().write(Samples.table(COLUMNS, features.toArray(new Feature[0])), file);
      FeatureTable found = GeoJson.reader().read(file);
      assertThat(found.features()).hasSameSizeAs(features);
      for (int i = 0; i < features.size(); i++) {
        Feature before = features.get(i);
        Feature after = found.features().get(i);
        // nine decimals: half a unit in x and in y, hypot(0.5e-9, 0.5e-9)
        assertThat(after.geometry().norm().equalsExact(before.geometry().norm(), 0.708e-9))
            .isTrue();
        assertThat(after.values()).isEqualTo(before.values());
      }
    } finally {
      Files.delete(file);
    }
  }

  @Property(seed = "3")
  void geoJsonKeepsNumbersOfAnySize(@ForAll("numbers") double number) throws Exception {
    Path file = Files.createTempFile("round-trip", ".geojson");
    try {
      Feature feature = Samples.feature("POINT (1 2)", number);
      List<Column> columns = List.of(Column.number("rate", 20, 3));
      GeoJson.writer().write(Samples.table(columns, feature), file);
      assertThat(GeoJson.reader().read(file).features().get(0).values())
          .containsExactly(number + 0.0);
    } finally {
      Files.delete(file);
    }
  }

  @Provide
  Arbitrary<Double> numbers() {
    return Arbitraries.oneOf(
        Arbitraries.longs().map(Double::longBitsToDouble).filter(Double::isFinite),
        Arbitraries.of(9007199254740991.0, 9007199254740992.0, -1e16, 1e20, Double.MAX_VALUE));
  }

  @Provide
  Arbitrary<List<Feature>> features() {
    return feature().list();
  }

  private static Arbitrary<Feature> feature() {
    Arbitrary<String> texts =
        Arbitraries.strings()
            .withChars("abc ÄöüßéŁ漢\uFFFD\"\\/,;")
            .withChars('0', '9')
            .ofMaxLength(60)
            .filter(t -> t.getBytes(StandardCharsets.UTF_8).length <= 254);
    Arbitrary<Double> numbers =
        Arbitraries.oneOf(
            Arbitraries.doubles().between(-1e12, 1e12).ofScale(6),
            Arbitraries.of(0.0, 1e15, -1e14, 1e-9, 0.0005, 2.6755, 123456789.9995));
    return Combinators.combine(shape(), texts, numbers, Arbitraries.of(Boolean.TRUE, Boolean.FALSE))
        .as((geometry, text, number, flag) -> new Feature(geometry, List.of(text, number, flag)));
  }

  /** One to three stars beside each other, each perhaps with a hole, drawn either way. */
  private static Arbitrary<Geometry> shape() {
    return Arbitraries.longs()
        .map(
            seed -> {
              Random random = new Random(seed);
              List<Polygon> stars = new ArrayList<>();
              double lon = -170 + 330 * random.nextDouble();
              double lat = -80 + 160 * random.nextDouble();
              int count = 1 + random.nextInt(3);
              for (int i = 0; i < count; i++) {
                LinearRing outer = star(random, lon + i * 0.1, lat, 0.02, 0.04);
                boolean holed = random.nextBoolean();
                LinearRing[] holes =
                    holed
                        ? new LinearRing[] {star(random, lon + i * 0.1, lat, 0.005, 0.01)}
                        : new LinearRing[0];
                stars.add(FACTORY.createPolygon(outer, holes));
              }
              return count == 1
                  ? stars.get(0)
                  : FACTORY.createMultiPolygon(stars.toArray(new Polygon[0]));
            });
  }

  private static LinearRing star(Random random, double x, double y, double near, double far) {
    int corners = 8 + random.nextInt(30);
    double way = random.nextBoolean() ? 1 : -1;
    Coordinate[] points = new Coordinate[corners + 1];
    for (int i = 0; i < corners; i++) {
      double angle = way * 2 * Math.PI * i / corners;
      double radius = near + (far - near) * random.nextDouble();
      points[i] = new Coordinate(x + radius * Math.cos(angle), y + radius * Math.sin(angle));
    }
    points[corners] = points[0].copy();
    return FACTORY.createLinearRing(points);
  }

  private static String text(Feature feature) {
    return String.valueOf(feature.values().get(0));
  }

  private static double number(Feature feature) {
    return feature.values().get(1) instanceof Double number ? number : Double.NaN;
  }

  private static double rounded(double value) {
    return BigDecimal.valueOf(value).setScale(3, RoundingMode.HALF_UP).doubleValue();
  }

  private static void delete(Path folder) throws IOException {
    try (var files = Files.list(folder)) {
      for (Path file : files.toList()) {
        Files.delete(file);
      }
    }
    Files.delete(folder);
  }
}
