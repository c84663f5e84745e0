package org.lynchet.integration.endtoend;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.databind.JsonNode;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import java.util.TreeMap;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.lynchet.integration.program.Program;
import org.lynchet.integration.program.Run;
import org.lynchet.integration.reader.ExternalReaders;
import org.lynchet.integration.witness.coverage.Polygons;

/** What the npm package isoxml reads in task data is what plan.geojson says. */
class TaskDataIT {
  /** The part that sums of areas in square degrees may differ by. */
  private static final double SAME_AREA = 1e-9;

  private static final double SQUARE_METRES_OF_AN_ACRE = 4046.8564224;

  /** Where task data lies in an output. */
  private static final String TASK_DATA = "taskdata/TASKDATA.zip";

  @TempDir Path folder;

  /** Fields with and without holes, along a line and along a curve, in acres and in hectares. */
  @ParameterizedTest
  @CsvSource({
    "sandhill-east, 4.3, 1, 2",
    "sandhill-east, 3.3, 1, 2",
    "contour-hill, 4.3, 1, 2",
    "contour-hill, 3.3, 1, 2",
    "metric-shapefile, 4.3, 0, 2",
    "metric-shapefile, 3.3, 0, 2",
  })
  void taskDataSaysWhatThePlanSays(String example, String version, int holes, int crops)
      throws IOException, InterruptedException {
    Path out = planned(example, version, "");
    JsonNode read = ExternalReaders.isoxml(out.resolve(TASK_DATA));
    assertThat(read.path("version").asText()).isEqualTo(version.substring(0, 1));
    assertThat(read.path("customer").asText()).isEqualTo("Invented Customer");
    assertThat(read.path("field").path("holes").asInt()).isEqualTo(holes);
    assertThat(read.path("tasks")).hasSize(crops);
    assertSame(read, out);
  }

  /** Three crops and four products, one of them at two rates. */
  @ParameterizedTest
  @ValueSource(strings = {"4.3", "3.3"})
  void manyProductsAreKeptApart(String version) throws IOException, InterruptedException {
    String oats =
        """
          - crop: oats
            planted-by: bean-planter
            passes: 1
            centre: {product: oats-1, rate: 3100000 seeds/ha}
          - crop: maize
            planted-by: maize-planter
            passes: 2
            centre: {product: tall-690, rate: 70000 seeds/ha}
        """;
    Path out = planned("metric-shapefile", version, oats);
    JsonNode read = ExternalReaders.isoxml(out.resolve(TASK_DATA));
    assertThat(read.path("tasks")).hasSize(3);
    assertThat(seen(read)).hasSize(5);
    assertSame(read, out);
  }

  /** Zones of a plan, and those of task data, made task data by {@code convert}. */
  @ParameterizedTest
  @ValueSource(strings = {"sandhill-east", "contour-hill", "metric-shapefile"})
  void convertedZonesSayWhatThePlanSays(String example) throws IOException, InterruptedException {
    Path out = planned(example, "4.3", "");
    Path first = convert(out.resolve("plan.geojson").toString(), "isoxml", "first.zip");
    assertSame(ExternalReaders.isoxml(first), out);
    Path table = convert(first.toString(), "geopackage", "zones.gpkg");
    Path last = convert(table.toString(), "isoxml", "last.zip");
    assertSame(ExternalReaders.isoxml(last), out);
    Path own = convert(out.resolve(TASK_DATA).toString(), "isoxml", "own.zip");
    assertSame(ExternalReaders.isoxml(own), out);
  }

  /** What was read against the plan.geojson of an output. */
  private static void assertSame(JsonNode read, Path out) throws IOException {
    assertThat(read.path("warnings")).isEmpty();
    for (JsonNode task : read.path("tasks")) {
      assertThat(task.path("lost").asInt(-1)).isZero();
      assertThat(task.path("outside").asInt(-1)).isZero();
      assertThat(task.path("zones").get(0).path("values").get(0).path("value").asInt(-1)).isZero();
    }
    Map<String, Sum> meant = meant(out.resolve("plan.geojson"));
    Map<String, Sum> seen = seen(read);
    assertThat(seen.keySet()).isEqualTo(meant.keySet());
    Sum nothing = new Sum(0, 0);
    meant.forEach(
        (setting, sum) -> {
          assertThat(seen.getOrDefault(setting, nothing).parts())
              .as(setting)
              .isEqualTo(sum.parts());
          assertThat(seen.getOrDefault(setting, nothing).area())
              .as(setting)
              .isCloseTo(sum.area(), within(SAME_AREA * sum.area()));
        });
  }

  /** Plans a copy of an example with task data, and more strips behind its own. */
  private Path planned(String name, String version, String strips)
      throws IOException, InterruptedException {
    Path copy = Folders.copy(Program.examples().resolve(name), folder.resolve(name));
    Path plan = copy.resolve("plan.yaml");
    String choices =
        "formats: [isoxml]\n  task-data: {version: "
            + version
            + ", customer: Invented Customer, farm: Invented Farm}\n";
    String text = Files.readString(plan).replaceAll("formats: \\[[^]]*]", choices);
    Files.writeString(plan, text.replace("\nhandoff:", strips + "\nhandoff:"));
    Path out = folder.resolve("out");
    run("plan", plan.toString(), "--out", out.toString());
    return out;
  }

  private Path convert(String in, String format, String out)
      throws IOException, InterruptedException {
    Path file = folder.resolve(out);
    run("convert", in, "--to", format, file.toString());
    return file;
  }

  private void run(String... arguments) throws IOException, InterruptedException {
    Run run = Program.jar().run(folder, arguments);
    assertThat(run.exitCode()).as(run.toString()).isZero();
  }

  /** Parts and square degrees of what gets one product at one rate. */
  private record Sum(int parts, double area) {
    Sum plus(int moreParts, double moreArea) {
      return new Sum(parts + moreParts, area + moreArea);
    }
  }

  /** ISO 11783-11, DDI 11: thousandths of a seed on a square metre. */
  private static Map<String, Sum> meant(Path plan) throws IOException {
    Map<String, Sum> sums = new TreeMap<>();
    for (JsonNode feature : Polygons.features(plan)) {
      JsonNode zone = feature.path("properties");
      if (zone.path("crop").asText().equals("none")) {
        continue;
      }
      double squareMetres =
          switch (zone.path("rate_unit").asText()) {
            case "seeds/ac" -> SQUARE_METRES_OF_AN_ACRE;
            case "seeds/ha" -> 10_000;
            default -> throw new IllegalStateException(zone.toString());
          };
      long raw = Math.round(zone.path("rate").asDouble() / squareMetres * 1000);
      String setting = zone.path("product").asText() + " " + raw;
      double area = Polygons.of(feature.path("geometry")).getArea();
      sums.put(setting, sums.getOrDefault(setting, new Sum(0, 0)).plus(1, area));
    }
    return sums;
  }

  private static Map<String, Sum> seen(JsonNode read) {
    Map<String, Sum> sums = new TreeMap<>();
    for (JsonNode task : read.path("tasks")) {
      for (JsonNode zone : task.path("zones")) {
        JsonNode value = zone.path("values").get(0);
        assertThat(zone.path("values")).hasSize(1);
        assertThat(value.path("ddi").asText()).isEqualTo("000B");
        if (zone.path("code").asInt() != 0) {
          String setting = value.path("product").asText() + " " + value.path("value").asInt();
          Sum sum = sums.getOrDefault(setting, new Sum(0, 0));
          sums.put(setting, sum.plus(zone.path("parts").asInt(), zone.path("area").asDouble()));
        }
      }
    }
    return sums;
  }
}
