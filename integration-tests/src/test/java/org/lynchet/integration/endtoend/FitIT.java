package org.lynchet.integration.endtoend;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.lynchet.integration.program.Program;
import org.lynchet.integration.program.Run;

/** What {@code fit} says of the example's machines. */
class FitIT {
  @TempDir Path folder;

  private Run fit(Example example, String... more) throws IOException, InterruptedException {
    String[] words = new String[2 + more.length];
    words[0] = "fit";
    words[1] = example.plan().toString();
    System.arraycopy(more, 0, words, 2, more.length);
    return Program.jar().run(folder, words);
  }

  /** The lines that the example's README shows. */
  @Test
  void printsWhatTheReadmeShows() throws IOException, InterruptedException {
    Example example = Example.copyInto(folder);
    Run run = fit(example);
    assertThat(run.exitCode()).as(run.toString()).isZero();
    assertThat(run.out().lines()).allMatch(line -> line.length() <= 100);
    List<String> shown =
        Files.readString(example.folder().resolve("README.md"))
            .lines()
            .filter(line -> line.startsWith("   ") && line.contains(" rows corn "))
            .toList();
    assertThat(shown).hasSize(4);
    assertThat(run.out().lines().map(String::stripTrailing)).containsAll(shown);
  }

  @Test
  void jsonListsAllThatFit() throws IOException, InterruptedException {
    Run run = fit(Example.copyInto(folder), "--json");
    assertThat(run.exitCode()).as(run.toString()).isZero();
    JsonNode fit = new ObjectMapper().readTree(run.out());
    assertThat(fit.path("schemaVersion").asInt()).isEqualTo(1);
    assertThat(fit.path("candidates")).hasSize(16).allMatch(one -> one.path("fits").asBoolean());
    JsonNode first = fit.path("candidates").path(0);
    assertThat(first.path("planned").asBoolean()).isTrue();
    assertThat(first.path("strips").path(0).path("width_m").asText()).isEqualTo("9.144");
    assertThat(first.path("machines")).hasSize(4);
    assertThat(first.path("reasons")).isNotEmpty();
  }

  @Test
  void saysWhatComesNearestWhenNothingFits() throws IOException, InterruptedException {
    Example example = Example.copyInto(folder);
    String plan = Files.readString(example.plan());
    Files.writeString(example.plan(), plan.replace("header: 30 ft", "header: 35 ft"));
    Run run = fit(example);
    assertThat(run.exitCode()).as(run.toString()).isZero();
    assertThat(run.out())
        .contains("; 0 fit to 2 in a pass")
        .contains("Nothing fits. The nearest miss, off by 5.00 ft a pass:")
        .contains("Cut, by more than the tolerance: 16");
  }
}
