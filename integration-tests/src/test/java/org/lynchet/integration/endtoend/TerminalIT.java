package org.lynchet.integration.endtoend;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.lynchet.integration.program.Program;
import org.lynchet.integration.program.Run;

/** Words of files and their names are shown, and none of them steers the terminal. */
class TerminalIT {
  /** Clears the screen; sets the window's title; bright red by one byte; turns reading around. */
  private static final String EVIL = "\u001B[2J\u001B]0;x\u0007\u009B91m\u202E";

  private static final String SHOWN = "\\u001B[2J\\u001B]0;x\\u0007\\u009B91m\\u202E";

  @TempDir Path folder;
  private Path plan = Path.of("");
  private String text = "";

  @BeforeEach
  void copyTheExample() throws IOException {
    plan = Example.copyInto(folder).plan();
    text = Files.readString(plan);
  }

  private Run refused(String... words) throws IOException, InterruptedException {
    Run run = Program.jar().run(folder, words);
    assertThat(run.exitCode()).as(run.toString()).isIn(2, 3);
    assertThat(run.err()).contains(SHOWN);
    assertThat((run.out() + run.err()).replaceAll("\\R", "").codePoints())
        .noneMatch(c -> Character.isISOControl(c) || c == 0x202E);
    return run;
  }

  private Run refusedPlan(String changed) throws IOException, InterruptedException {
    assertThat(changed).isNotEqualTo(text);
    Files.writeString(plan, changed);
    return refused("plan", plan.toString(), "--dry-run");
  }

  @Test
  void headersOfCsv() throws IOException, InterruptedException {
    Files.writeString(plan.resolveSibling("field.csv"), EVIL + ",lat\n1,2\n");
    Run run = refusedPlan(text.replace("sandhill-east.geojson", "field.csv"));
    assertThat(run.err()).contains("no column lon");
  }

  @Test
  void namesOfAttributes() throws IOException, InterruptedException {
    Path soils = plan.resolveSibling("soils.geojson");
    Files.writeString(
        soils,
        Files.readString(soils)
            .replace("\"zone\"", "\"\\u001b[2J\\u001b]0;x\\u0007\\u009b91m\\u202e\""));
    refusedPlan(text + "\n");
  }

  @Test
  void valuesOfAttributes() throws IOException, InterruptedException {
    Path soils = plan.resolveSibling("soils.geojson");
    Files.writeString(
        soils,
        Files.readString(soils)
            .replace("\"high\"", "\"\\u001b[2J\\u001b]0;x\\u0007\\u009b91m\\u202e\""));
    refusedPlan(text + "\n");
  }

  @Test
  void valuesAndKeysOfThePlan() throws IOException, InterruptedException {
    String escaped = "\"\\e[2J\\e]0;x\\a\\x9b91m\\u202e\"";
    refusedPlan(text.replace("name: Sandhill East", "name: " + escaped));
    refusedPlan(text.replace("name: Sandhill East", "name: x\n  " + escaped + ": y"));
    refusedPlan(text.replace("row-spacing: 30 in", "row-spacing: " + escaped));
    refusedPlan(text.replace("boundary: sandhill-east.geojson", "boundary: " + escaped));
  }

  @Test
  void namesOfFiles() throws IOException, InterruptedException {
    String name = "a" + EVIL + ".yaml";
    Path strange = plan.resolveSibling(name);
    Files.writeString(strange, text.replace("rows: 12", "rows: 0"));
    refused("plan", strange.toString(), "--dry-run");
    refused("plan", plan.toString(), strange.toString());
    refused("check", strange.toString());
    refused("plan", plan.toString(), "--out", strange.toString());
  }
}
