package org.lynchet.integration.endtoend;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.junit.jupiter.params.provider.Arguments.arguments;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;
import java.util.stream.Stream;
import java.util.zip.ZipEntry;
import java.util.zip.ZipOutputStream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import org.locationtech.jts.geom.Coordinate;
import org.lynchet.integration.program.Program;
import org.lynchet.integration.program.Run;

/** One field by every form of boundary comes to the same; what cannot be taken is one fault. */
class IntakeIT {
  private static final GroundField FIELD = GroundField.of(-94.1, 42, 13, 60, 50);

  /** Web Mercator's sphere: EPSG Guidance Note 7-2, method 1024. */
  private static final double MERCATOR_RADIUS = 6378137;

  @TempDir Path folder;
  private Path plan = Path.of("");

  @BeforeEach
  void writePlan() throws IOException {
    plan = FIELD.writeInto(folder);
  }

  /** Files by name, made of the same four corners. */
  static Stream<Arguments> sameField() {
    return Stream.of(
        arguments("corners.csv", "lon,lat\n" + rows("%2$.9f,%1$.9f\n")),
        arguments("ring.csv", "part,ring,lat,lon\n" + rows("1,1,%1$.9f,%2$.9f\n")),
        arguments("old.geojson", mercator("urn:ogc:def:crs:EPSG::3857")),
        arguments("older.geojson", mercator("EPSG:3857")),
        arguments(
            "feature.geojson",
            "{\"type\":\"Feature\",\"properties\":{},\"geometry\":" + FIELD.boundary() + "}"));
  }

  @ParameterizedTest(name = "{0}")
  @MethodSource("sameField")
  void sameFieldInAnyForm(String name, String text) throws IOException, InterruptedException {
    Files.writeString(folder.resolve(name), text);
    assertThat(area(name)).isCloseTo(area("field.geojson"), within(1e-3));
  }

  @Test
  void zipIsTakenLikeTheShapefileInIt() throws IOException, InterruptedException {
    Path out = folder.resolve("out");
    assertThat(planWith("field.geojson", "--out", out.toString()).exitCode()).isZero();
    try (ZipOutputStream zip =
        new ZipOutputStream(Files.newOutputStream(folder.resolve("a.zip")))) {
      for (String ending : new String[] {".shp", ".dbf", ".prj", ".shx", ".cpg"}) {
        Path file = out.resolve("planting/corn" + ending);
        zip.putNextEntry(new ZipEntry("farm/corn" + ending));
        zip.write(Files.readAllBytes(file));
        Files.copy(file, folder.resolve("corn" + ending));
      }
    }
    assertThat(area("a.zip")).isEqualTo(area("corn.shp")).isGreaterThan(1000);
  }

  /** A file's name, its text, and what the fault must say. */
  static Stream<Arguments> refused() {
    return Stream.of(
        arguments("a.csv", "lon,lat\n-94.1,42\n-94.0,4x2\n-94,42.1\n", "line 3, column lat"),
        arguments("a.csv", "x,y\n1,2\n", "no column lon"),
        arguments("a.geojson", mercator("urn:ogc:def:crs:EPSG::999999"), "EPSG:999999"),
        arguments("a.geojson", mercator("somewhere"), "somewhere"),
        arguments(
            "a.geojson",
            "{\"type\":\"MultiPolygon\",\"coordinates\":["
                + "[[[179.99,0],[180,0],[180,0.01],[179.99,0]]],"
                + "[[[-180,0],[-179.99,0],[-180,0.01],[-180,0]]]]}",
            "antimeridian"),
        arguments("a.zip", "PK, but no zip", "a.zip"));
  }

  @ParameterizedTest(name = "{2}")
  @MethodSource("refused")
  void refusedWithItsPlace(String name, String text, String said)
      throws IOException, InterruptedException {
    Files.writeString(folder.resolve(name), text);
    assertFault(planWith(name, "--dry-run"), said);
  }

  @Test
  void zipThatLeadsElsewhere() throws IOException, InterruptedException {
    pack("trick.zip", "../../elsewhere.shp", 100);
    assertFault(planWith("trick.zip", "--dry-run"), "leads elsewhere");
    assertThat(folder.resolve("../../elsewhere.shp")).doesNotExist();
  }

  /** 300 MB of nothing in 0.3 MB. */
  @Test
  void zipThatIsABomb() throws IOException, InterruptedException {
    pack("bomb.zip", "a.shp", 300 << 20);
    assertFault(planWith("bomb.zip", "--dry-run"), "unpacks to more than");
  }

  /** 20 km away it is another field's line, or the numbers are swapped; 9 km away it is not. */
  @Test
  void abLineFarFromTheField() throws IOException, InterruptedException {
    assertThat(planWithLineAt("42.085").exitCode()).isZero();
    assertFault(planWithLineAt("42.18"), "km from the field");
  }

  private Run planWithLineAt(String latitude) throws IOException, InterruptedException {
    String line = "ab-line: {through: [-94.1, " + latitude + "], heading: 13}";
    Files.writeString(plan, FIELD.plan().replaceFirst("ab-line: \\{.*}", line));
    return planWith("field.geojson", "--dry-run");
  }

  @Test
  void rateBeyondThePlantersLimits() throws IOException, InterruptedException {
    String limits = "rate-limits: {min: 20000 seeds/ac, max: 35000 seeds/ac}}";
    Files.writeString(plan, FIELD.plan().replaceFirst("30 in}", "30 in, " + limits));
    assertFault(planWith("field.geojson", "--dry-run"), "'36000 seeds/ac' is outside");
  }

  @Test
  void stripWiderThanTheFieldIsAWarning() throws IOException, InterruptedException {
    Files.writeString(plan, FIELD.plan().replaceFirst("passes: 1", "passes: 9"));
    Run run = planWith("field.geojson", "--dry-run");
    assertThat(run.exitCode()).isZero();
    assertThat(run.out()).contains("Warning STRIP_WIDER_THAN_FIELD");
  }

  @Test
  void repairedOnRequest() throws IOException, InterruptedException {
    Coordinate a = FIELD.a();
    Files.writeString(
        folder.resolve("bow.geojson"),
        String.format(
            Locale.ROOT,
            "{\"type\":\"Polygon\",\"coordinates\":[[[%1$f,%2$f],[%3$f,%4$f],[%3$f,%2$f],"
                + "[%1$f,%4$f],[%1$f,%2$f]]]}",
            a.x,
            a.y,
            a.x + 0.001,
            a.y + 0.001));
    assertFault(planWith("bow.geojson", "--dry-run"), "self-intersection");
    Files.writeString(
        plan, FIELD.plan().replace("  minimum-piece", "  repair: true\n  minimum-piece"));
    Run run = planWith("bow.geojson", "--dry-run");
    assertThat(run.exitCode()).as(run.toString()).isZero();
    assertThat(run.out()).contains("Warning BOUNDARY_REPAIRED").contains("a change of");
  }

  private double area(String boundary) throws IOException, InterruptedException {
    Run run = planWith(boundary, "--dry-run", "--json");
    JsonNode area = new ObjectMapper().readTree(run.outOrThrow()).at("/area_m2");
    assertThat(area.isNumber()).as(run.out()).isTrue();
    return area.asDouble();
  }

  private Run planWith(String boundary, String... options)
      throws IOException, InterruptedException {
    Path other = folder.resolve("other.yaml");
    Files.writeString(other, Files.readString(plan).replace("field.geojson", boundary));
    String[] words = new String[options.length + 2];
    words[0] = "plan";
    words[1] = other.toString();
    System.arraycopy(options, 0, words, 2, options.length);
    return Program.jar().run(folder, words);
  }

  private static void assertFault(Run run, String said) {
    assertThat(run.exitCode()).as(run.toString()).isEqualTo(3);
    assertThat(run.out()).isEmpty();
    assertThat(run.err()).doesNotContain("\tat ").doesNotContain("Exception");
    assertThat(FaultText.in(run.err()))
        .anyMatch(fault -> (fault.what() + fault.where()).contains(said));
  }

  private void pack(String zipName, String entry, int zeros) throws IOException {
    byte[] block = new byte[1 << 20];
    try (ZipOutputStream zip =
        new ZipOutputStream(Files.newOutputStream(folder.resolve(zipName)))) {
      zip.putNextEntry(new ZipEntry(entry));
      for (int left = zeros; left > 0; left -= block.length) {
        zip.write(block, 0, Math.min(left, block.length));
      }
    }
  }

  private static Coordinate[] corners() {
    return FIELD.polygon().getCoordinates();
  }

  /** A line for each vertex, of its latitude (1) and longitude (2). */
  private static String rows(String form) {
    StringBuilder rows = new StringBuilder();
    for (Coordinate at : corners()) {
      rows.append(String.format(Locale.ROOT, form, at.y, at.x));
    }
    return rows.toString();
  }

  /** In Web Mercator, with the crs member of GeoJSON before RFC 7946. */
  private static String mercator(String crs) {
    StringBuilder ring = new StringBuilder();
    for (Coordinate at : corners()) {
      double x = MERCATOR_RADIUS * Math.toRadians(at.x);
      double y = MERCATOR_RADIUS * Math.log(Math.tan(Math.PI / 4 + Math.toRadians(at.y) / 2));
      ring.append(ring.isEmpty() ? "" : ",")
          .append(String.format(Locale.ROOT, "[%.6f,%.6f]", x, y));
    }
    return "{\"type\":\"Polygon\",\"crs\":{\"type\":\"name\",\"properties\":{\"name\":\""
        + crs
        + "\"}},\"coordinates\":[["
        + ring
        + "]]}";
  }
}
