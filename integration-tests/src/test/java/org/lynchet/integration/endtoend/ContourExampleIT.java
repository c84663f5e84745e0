package org.lynchet.integration.endtoend;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import net.sf.geographiclib.Geodesic;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.operation.union.UnaryUnionOp;
import org.lynchet.integration.program.Program;
import org.lynchet.integration.program.Run;
import org.lynchet.integration.witness.coverage.CoverageWitness;
import org.lynchet.integration.witness.coverage.Polygons;

/** The example along a contour: what its README says, and what the ground says. */
class ContourExampleIT {
  private static final double ACRE = 4046.8564224;

  @TempDir static Path folder;
  private static Path out = Path.of("");
  private static Run run = new Run(List.of(), -1, "", "");

  @BeforeAll
  static void planTheExample() throws IOException, InterruptedException {
    Path example =
        Folders.copy(Program.examples().resolve("contour-hill"), folder.resolve("contour-hill"));
    out = folder.resolve("out");
    String plan = example.resolve("plan.yaml").toString();
    run = Program.jar().run(folder, "plan", plan, "--out", out.toString());
    assertThat(run.exitCode()).as(run.toString()).isZero();
  }

  @Test
  void zonesAreAnEdgeMatchedPartitionOfTheField() throws IOException {
    Path boundary = folder.resolve("contour-hill").resolve("contour-hill.geojson");
    Geometry field = UnaryUnionOp.union(Polygons.read(boundary));
    assertThat(CoverageWitness.inspect(Polygons.read(out.resolve("plan.geojson")), field))
        .isEmpty();
  }

  @Test
  void checkFindsNothing() throws IOException, InterruptedException {
    assertThat(Program.jar().run(folder, "check", out.toString()).exitCode()).isZero();
  }

  /** Areas from buffers of the curve by shapely 1.8, its projection by pyproj 3.4. */
  @ParameterizedTest
  @CsvSource({
    "corn, headland, 9.5162",
    "corn, centre, 13.5012",
    "corn, border, 6.6946",
    "soybean, centre, 20.1134"
  })
  void areasAreThoseOfBuffersOfTheCurve(String crop, String zone, double acres) throws IOException {
    double sum = 0;
    for (JsonNode total : summary().path("zones")) {
      if (total.path("crop").asText().equals(crop) && total.path("zone").asText().equals(zone)) {
        sum += total.path("area_m2").asDouble();
      }
    }
    assertThat(sum / ACRE).isCloseTo(acres, within(3e-4));
  }

  @Test
  void readmeGivesItsTotals() throws IOException {
    String readme = Files.readString(Program.examples().resolve("contour-hill/README.md"));
    assertThat(summary().path("curve").path("length_m").asDouble()).isBetween(600.0, 630.0);
    assertThat(summary().path("ab_line_heading_degrees").isMissingNode()).isTrue();
    for (JsonNode total : summary().path("zones")) {
      String acres = String.format(Locale.ROOT, "%.2f", total.path("area_m2").asDouble() / ACRE);
      assertThat(readme).contains("| " + acres + " |");
    }
  }

  /** Lines of neighbouring passes are 30 ft apart on the ground, 1 mm: GeographicLib. */
  @Test
  void passesAreAPassApartOnTheGround() throws IOException {
    List<Coordinate[]> lines = new ArrayList<>();
    for (JsonNode pass : Polygons.features(out.resolve("guidance/passes.geojson"))) {
      JsonNode geometry = pass.path("geometry");
      if (geometry.path("type").asText().equals("LineString")) {
        List<Coordinate> line = new ArrayList<>();
        geometry
            .path("coordinates")
            .forEach(at -> line.add(new Coordinate(at.get(0).asDouble(), at.get(1).asDouble())));
        lines.add(line.toArray(new Coordinate[0]));
      }
    }
    assertThat(lines).hasSizeGreaterThan(20);
    Coordinate[] one = lines.get(18);
    Coordinate[] next = lines.get(19);
    for (int i = 20; i < one.length - 20; i += 25) {
      assertThat(nearest(one[i], next)).isCloseTo(9.144, within(1e-3));
    }
  }

  private static double nearest(Coordinate at, Coordinate[] line) {
    double least = Double.POSITIVE_INFINITY;
    for (int i = 1; i < line.length; i++) {
      // Points are a metre or two apart here, and 9.144 m away: hundredths of that are near enough
      for (int k = 0; k <= 100; k++) {
        double t = k / 100.0;
        double lon = line[i - 1].x + t * (line[i].x - line[i - 1].x);
        double lat = line[i - 1].y + t * (line[i].y - line[i - 1].y);
        least = Math.min(least, Geodesic.WGS84.Inverse(at.y, at.x, lat, lon).s12);
      }
    }
    return least;
  }

  private static JsonNode summary() throws IOException {
    return new ObjectMapper().readTree(out.resolve("summary.json").toFile());
  }
}
