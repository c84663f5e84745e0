package org.lynchet.integration.endtoend;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.lynchet.integration.program.Program;
import org.lynchet.integration.program.Run;

/** The light of the example's rows, from outside. */
class LightIT {
  @TempDir Path folder;

  private Run light(String... arguments) throws IOException, InterruptedException {
    Path plan = Program.examples().resolve("sandhill-east").resolve("plan.yaml");
    String[] all = new String[arguments.length + 2];
    all[0] = "light";
    all[1] = plan.toString();
    System.arraycopy(arguments, 0, all, 2, arguments.length);
    return Program.jar().run(folder, all);
  }

  @Test
  void tellsLightYieldAndBorder() throws Exception {
    Run run = light();
    assertThat(run.exitCode()).as(run.toString()).isZero();
    assertThat(run.out())
        .contains("Sandhill East: latitude 43.55", "Land equivalent ratio", "Dry-season warning")
        .contains("on the border of strip 1, corn");
    assertThat(run.out().lines()).allMatch(line -> line.length() <= 100);
  }

  @Test
  void jsonIsOneRowForEachRowOfAPeriod() throws Exception {
    Run run = light("--json");
    JsonNode json = new ObjectMapper().readTree(run.out());
    // 12 rows of corn and 24 of soybean.
    assertThat(json.path("rows")).hasSize(36);
    assertThat(json.path("rows").path(35).path("relative_absorbed").asDouble()).isBetween(0.3, 0.7);
  }

  @Test
  void writesFilesOnceAndTheSameEachTime() throws Exception {
    assertThat(light("--out", "a").exitCode()).isZero();
    assertThat(light("--out", "b", "--png").exitCode()).isZero();
    for (String name : new String[] {"light.csv", "light-rows.svg", "light-shade.svg"}) {
      assertThat(folder.resolve("a").resolve(name))
          .hasSameBinaryContentAs(folder.resolve("b").resolve(name));
    }
    assertThat(folder.resolve("b/light-shade.png")).isNotEmptyFile();
    Run again = light("--out", "a");
    assertThat(again.exitCode()).isEqualTo(3);
    assertThat(again.err()).contains("a file is there already", "--force", "3 faults");
    assertThat(light("--out", "a", "--force").exitCode()).isZero();
    try (var files = Files.list(folder.resolve("a"))) {
      assertThat(files).hasSize(3);
    }
  }

  /** With --force too, a folder in the way is left, and with it all the other files. */
  @Test
  void replacesAllFilesOrNone() throws Exception {
    Path out = Files.createDirectory(folder.resolve("a"));
    Path mine = Files.writeString(out.resolve("light.csv"), "mine");
    Files.createDirectories(out.resolve("light-shade.svg/full"));
    Run run = light("--out", "a", "--force");
    assertThat(run.exitCode()).isEqualTo(3);
    assertThat(run.err()).contains("a folder is where a file has to be").doesNotContain("java.");
    assertThat(mine).hasContent("mine");
    assertThat(out.resolve("light-shade.svg/full")).isDirectory();
    Files.writeString(folder.resolve("lf"), "");
    assertThat(light("--out", "lf").err())
        .contains("a file is where a folder has to be: ")
        .doesNotContain("java.");
  }

  @Test
  void optionsThatNeedAFolderAndDatesThatAreNoneAreWrongUsage() throws Exception {
    Run png = light("--png");
    assertThat(png.exitCode()).isEqualTo(2);
    assertThat(png.err()).contains("--force, --png and --dates go with --out");
    Run june = light("--out", "a", "--dates", "june");
    assertThat(june.exitCode()).isEqualTo(2);
    assertThat(june.err()).contains("'june' is not a date; write it like 2027-06-21");
  }

  @Test
  void refusesDaysThatAreNotOfTheSeason() throws Exception {
    Run run = light("--out", "a", "--dates", "2025-01-21");
    assertThat(run.exitCode()).isEqualTo(3);
    assertThat(run.err()).contains("2025-01-21 is not of the season", "2025-05-01 to 2025-09-09");
    assertThat(folder.resolve("a")).doesNotExist();
  }
}
