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

  @TempDir Path folder;

  @ParameterizedTest
  @ValueSource(strings = {"4.3", "3.3"})
  void taskDataSaysWhatThePlanSays(String version) throws IOException, InterruptedException {
    Path out = plan(version);
    JsonNode read = ExternalReaders.isoxml(out.resolve("taskdata/TASKDATA.zip"));
    assertThat(read.path("warnings")).isEmpty();
    assertThat(read.path("version").asText()).isEqualTo(version.substring(0, 1));
    assertThat(read.path("customer").asText()).isEqualTo("Invented Customer");
    assertThat(read.path("field").path("holes").asInt()).isEqualTo(1);
    assertThat(read.path("tasks")).hasSize(2);
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

  private Path plan(String version) throws IOException, InterruptedException {
    Example example = Example.copyInto(folder);
    String text = Files.readString(example.plan());
    String choices =
        "formats: [isoxml]\n  task-data: {version: "
            + version
            + ", customer: Invented Customer, farm: Invented Farm}\n";
    Files.writeString(example.plan(), text.replaceAll("formats: \\[[^]]*]", choices));
    Path out = folder.resolve("out");
    Run run = Program.jar().run(folder, "plan", example.plan().toString(), "--out", out.toString());
    assertThat(run.exitCode()).as(run.toString()).isZero();
    return out;
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
      assertThat(zone.path("rate_unit").asText()).isEqualTo("seeds/ac");
      long raw = Math.round(zone.path("rate").asDouble() / SQUARE_METRES_OF_AN_ACRE * 1000);
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
