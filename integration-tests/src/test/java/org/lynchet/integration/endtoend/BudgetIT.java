package org.lynchet.integration.endtoend;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.lynchet.integration.program.Program;
import org.lynchet.integration.program.Run;

/** The money of the example, from outside. */
class BudgetIT {
  private static final Path EXAMPLE = Program.examples().resolve("sandhill-east");

  @TempDir Path folder;

  private Run budget(Path plan, String... arguments) throws IOException, InterruptedException {
    return Program.jar()
        .run(
            folder,
            Stream.concat(Stream.of("budget", plan.toString()), Stream.of(arguments))
                .toArray(String[]::new));
  }

  private Run budget(String... arguments) throws IOException, InterruptedException {
    return budget(EXAMPLE.resolve("plan.yaml"), arguments);
  }

  /** The example's plan with something replaced, beside copies of its data. */
  private Path changed(String find, String replacement) throws IOException {
    for (String name : new String[] {"sandhill-east.geojson", "soils.geojson"}) {
      if (Files.notExists(folder.resolve(name))) {
        Files.copy(EXAMPLE.resolve(name), folder.resolve(name));
      }
    }
    String plan = Files.readString(EXAMPLE.resolve("plan.yaml"));
    assertThat(plan).contains(find);
    return Files.writeString(folder.resolve("plan.yaml"), plan.replace(find, replacement));
  }

  @Test
  void weighsStripsAgainstBlocks() throws Exception {
    Run run = budget();
    assertThat(run.exitCode()).as(run.toString()).isZero();
    assertThat(run.out())
        .startsWith("Sandhill East: 91.14 ac, strips against separate blocks")
        .contains("added returns", "BREAK-EVEN", "WHAT MATTERS MOST", "SEED TO ORDER")
        .contains("A forecast is not a promise", "check them before you decide");
    assertThat(run.out().lines()).allMatch(line -> line.length() <= 100);
  }

  @Test
  void jsonHasTheNet() throws Exception {
    JsonNode json = new ObjectMapper().readTree(budget("--json").out());
    assertThat(json.path("schemaVersion").asInt()).isEqualTo(1);
    double sum = 0;
    for (JsonNode item : json.path("items")) {
      sum += item.path("change_of_net").path("typical").asDouble();
    }
    JsonNode net = json.path("net");
    assertThat(Math.round(100 * sum)).isEqualTo(Math.round(100 * net.path("typical").asDouble()));
    assertThat(net.path("low").asDouble()).isLessThan(net.path("high").asDouble());
  }

  @Test
  void writesFilesOnceAndTheSameEachTime() throws Exception {
    assertThat(budget("--out", "a").exitCode()).isZero();
    assertThat(budget("--out", "b", "--png").exitCode()).isZero();
    for (String name : new String[] {"budget.csv", "budget-swings.svg"}) {
      assertThat(folder.resolve("a").resolve(name))
          .hasSameBinaryContentAs(folder.resolve("b").resolve(name));
    }
    assertThat(folder.resolve("b/budget-swings.png")).isNotEmptyFile();
    Run again = budget("--out", "a");
    assertThat(again.exitCode()).isEqualTo(3);
    assertThat(again.err()).contains("a file is there already", "--force", "2 faults");
    assertThat(budget("--out", "a", "--force").exitCode()).isZero();
    try (var files = Files.list(folder.resolve("a"))) {
      assertThat(files).hasSize(2);
    }
  }

  @Test
  void optionsThatNeedAFolderAreWrongUsage() throws Exception {
    Run png = budget("--png");
    assertThat(png.exitCode()).isEqualTo(2);
    assertThat(png.err()).contains("--force and --png go with --out");
  }

  @Test
  void tellsAllThatIsMissingAtOnce() throws Exception {
    Path plan = changed("\n    soybean:\n      price", "\n    corn-2:\n      price");
    Run unknown = budget(plan);
    assertThat(unknown.exitCode()).isEqualTo(3);
    assertThat(unknown.err()).contains("no strip is of 'corn-2'");
    Run missing = budget(changed("tall-108: 285 /unit, short-106: 310 /unit, ", ""), "--out", "a");
    assertThat(missing.exitCode()).isEqualTo(3);
    assertThat(missing.err())
        .contains("what seed of short-106 costs", "what seed of tall-108 costs", "2 faults");
    assertThat(folder.resolve("a")).doesNotExist();
  }

  @Test
  void alongACurveThePlanMustTellTheChanges() throws Exception {
    Run run = budget(Program.examples().resolve("contour-hill").resolve("plan.yaml"));
    assertThat(run.exitCode()).isEqualTo(3);
    assertThat(run.err()).contains("rows along a curve have no one heading");
    assertThat(run.err()).contains("nothing is known of what corn brings");
  }
}
