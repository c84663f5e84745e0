package org.lynchet.integration.endtoend;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.lynchet.integration.program.Child;
import org.lynchet.integration.program.Program;
import org.lynchet.integration.program.Run;
import org.lynchet.integration.program.Tools;

/** The example compared in strips of one pass each, from outside. */
class CompareIT {
  @TempDir Path folder;

  @BeforeEach
  void copyTheExample() throws IOException {
    ComparedExample.copyTo(folder);
  }

  private Run compare(String... arguments) throws IOException, InterruptedException {
    return Program.jar().run(folder, ComparedExample.words(arguments));
  }

  @Test
  void tellsTheAnswerTheRankingAndWhatDrivesIt() throws Exception {
    Run run = compare();
    assertThat(run.exitCode()).as(run.toString()).isZero();
    assertThat(run.out())
        .containsPattern("Sandhill East\\. (Plant blocks|Strips):")
        .contains("RANK", "NET", "12 rows corn 30 ft, 24 rows soybean 30 ft *")
        .contains("What drives the ranking", "A forecast is not a promise");
    assertThat(run.out().lines()).allMatch(line -> line.length() <= 100);
    assertThat(run.err()).as("a bar where there is no terminal").isEmpty();
  }

  @Test
  void jsonHasAllCandidatesAndIsTheSameOnOneProcessor() throws Exception {
    Run run = compare("--json");
    JsonNode json = new ObjectMapper().readTree(run.outOrThrow());
    assertThat(json.path("schemaVersion").asInt()).isEqualTo(1);
    assertThat(json.path("candidates")).hasSize(14);
    double before = Double.POSITIVE_INFINITY;
    for (JsonNode candidate : json.path("candidates")) {
      double net = candidate.path("net_per_area").path("typical").asDouble();
      assertThat(net).isLessThanOrEqualTo(before + 0.01);
      before = net;
    }
    Run one =
        Program.jar(List.of("-XX:ActiveProcessorCount=1"))
            .run(folder, ComparedExample.words("--json"));
    assertThat(one.out()).isEqualTo(run.out());
  }

  @Test
  void writesThePageOnce() throws Exception {
    assertThat(compare("--report", "new/page.html").out()).contains("Written to new/page.html");
    assertThat(folder.resolve("new")).isDirectoryContaining("glob:**page.html");
    Run again = compare("--report", "new/page.html");
    assertThat(again.exitCode()).isEqualTo(3);
    assertThat(again.err()).contains("a file is there already", "page.html", "--force");
    Run force = compare("--force");
    assertThat(force.exitCode()).isEqualTo(2);
    assertThat(force.err()).contains("--force goes with --report");
    assertThat(compare("--report", "new").err()).contains("a folder is there");
    try (var files = Files.list(folder.resolve("new"))) {
      assertThat(files).hasSize(1);
    }
  }

  @Test
  void rowsAlongACurveHaveNoForecast() throws Exception {
    Path plan = Program.examples().resolve("contour-hill").resolve("plan.yaml");
    Run run = Program.jar().run(folder, "compare", plan.toString());
    assertThat(run.exitCode()).isEqualTo(3);
    assertThat(run.err()).contains("rows along a curve have no one heading");
  }

  /** {@code script} gives the program a terminal. */
  @Test
  void aBarGrowsOnATerminal() throws Exception {
    Tools.assumeInstalled("script");
    List<String> words = Program.jar().words(ComparedExample.words("--json"));
    Run run =
        Child.of(folder, "script", "-qec", String.join(" ", words) + " > out.json", "/dev/null")
            .run();
    assertThat(run.out()).contains("\r[####", "] 100 %");
    assertThat(new ObjectMapper().readTree(folder.resolve("out.json").toFile()).path("candidates"))
        .hasSize(14);
  }
}
