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
import java.util.Optional;
import java.util.stream.StreamSupport;
import net.sf.geographiclib.Geodesic;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.lynchet.integration.program.Program;
import org.lynchet.integration.program.Run;

/** How the example is driven and loaded, held against its guidance lines and its zones. */
class DrivingIT {
  @TempDir static Path folder;
  private static Path out = Path.of("");
  private static JsonNode summary = new ObjectMapper().createObjectNode();

  @BeforeAll
  static void planTheExample() throws IOException, InterruptedException {
    Example example = Example.copyInto(folder);
    out = folder.resolve("out");
    Run run = Program.jar().run(folder, "plan", example.plan().toString(), "--out", out.toString());
    assertThat(run.exitCode()).as(run.toString()).isZero();
    summary = new ObjectMapper().readTree(out.resolve("summary.json").toFile());
  }

  /** The lines of a machine in a crop; a combine drives the planter's where both are as wide. */
  private static List<JsonNode> guidanceLines(String machine, String crop) throws IOException {
    String file =
        machine.equals("sprayer")
            ? "spraying/lines/" + crop + ".geojson"
            : "guidance/passes.geojson";
    JsonNode passes = new ObjectMapper().readTree(out.resolve(file).toFile());
    return StreamSupport.stream(passes.path("features").spliterator(), false)
        .filter(line -> property(line, "crop").orElseThrow().asText().equals(crop))
        .toList();
  }

  /** Shapefile columns are in capitals, and so are the same properties beside them. */
  private static Optional<JsonNode> property(JsonNode line, String name) {
    JsonNode properties = line.path("properties");
    return Optional.ofNullable(
        properties.has(name)
            ? properties.get(name)
            : properties.get(name.toUpperCase(Locale.ROOT)));
  }

  /** Each guidance line once, and as long in the row as the lines are by geodesics. */
  @Test
  void drivesEveryGuidanceLineOnce() throws IOException {
    assertThat(summary.path("driving").findValuesAsText("machine"))
        .containsExactly(
            "corn-planter", "bean-planter", "sprayer", "sprayer", "combine", "combine");
    for (JsonNode driving : summary.path("driving")) {
      String machine = driving.path("machine").asText();
      List<JsonNode> lines = guidanceLines(machine, driving.path("crop").asText());
      List<Integer> driven = new ArrayList<>();
      driving.path("passes").forEach(pass -> driven.add(pass.path("pass").asInt()));
      List<Integer> drawn =
          lines.stream().map(line -> property(line, "pass").orElseThrow().asInt()).toList();
      if (machine.equals("combine")) {
        assertThat(driven).hasSameSizeAs(drawn);
      } else {
        assertThat(driven).containsExactlyInAnyOrderElementsOf(drawn);
      }
      double metres = lines.stream().mapToDouble(line -> metres(line.path("geometry"))).sum();
      // The plane of a field stretches distances by less than 1 part in 100,000.
      assertThat(driving.path("in_row_m").asDouble()).isCloseTo(metres, within(metres * 1e-5));
    }
  }

  private static double metres(JsonNode geometry) {
    JsonNode coordinates = geometry.path("coordinates");
    if (geometry.path("type").asText().equals("LineString")) {
      return along(coordinates);
    }
    double metres = 0;
    for (JsonNode line : coordinates) {
      metres += along(line);
    }
    return metres;
  }

  private static double along(JsonNode line) {
    double metres = 0;
    for (int i = 1; i < line.size(); i++) {
      metres +=
          Geodesic.WGS84.Inverse(
                  line.get(i - 1).get(1).asDouble(),
                  line.get(i - 1).get(0).asDouble(),
                  line.get(i).get(1).asDouble(),
                  line.get(i).get(0).asDouble())
              .s12;
    }
    return metres;
  }

  /**
   * By hand from the plan: two border rows on each side of strips of one pass, so both ways of
   * driving load alike; strip 57 lies beside headland of corn and has a border on one side only;
   * the headland takes the centre's product from all row units.
   */
  @Test
  void loadsTheCornPlanterAsByHand() throws IOException {
    assertThat(summary.path("loading")).hasSize(1);
    JsonNode loading = summary.path("loading").get(0);
    for (int unit = 1; unit <= 12; unit++) {
      boolean border = unit <= 2 || unit >= 11;
      assertThat(loading.path("row_units").path(unit - 1).asText())
          .isEqualTo(border ? "short-106" : "tall-108");
    }
    assertThat(loading.path("exceptions")).hasSize(1);
    JsonNode exception = loading.path("exceptions").get(0);
    assertThat(exception.path("strip").asInt()).isEqualTo(57);
    assertThat(exception.path("planned").asText()).isEqualTo("tall-108");
    // West to east, the last pass is driven along: its right is south, units 11 and 12.
    assertThat(exception.path("row_units").toString()).isEqualTo("[11,12]");
    assertThat(Files.readString(out.resolve("README.txt")))
        .contains("row units 1-2, 11-12: short-106", "HEADLAND: it takes tall-108");
  }
}
