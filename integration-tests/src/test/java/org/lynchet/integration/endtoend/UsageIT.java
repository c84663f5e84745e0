package org.lynchet.integration.endtoend;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.lynchet.integration.program.Program;
import org.lynchet.integration.program.Run;

/** Wrong usage ends with exit code 2 and a word of help, help with 0. */
class UsageIT {
  @TempDir Path folder;

  @ParameterizedTest
  @ValueSource(strings = {"", "plow", "plan", "plan a.yaml b.yaml", "plan a.yaml --fast", "check"})
  void wrongUsage(String line) throws IOException, InterruptedException {
    String[] words = line.isEmpty() ? new String[0] : line.split(" ");
    Run run = Program.jar().run(folder, words);
    assertThat(run.exitCode()).as(run.toString()).isEqualTo(2);
    assertThat(run.out()).isEmpty();
    assertThat(run.err()).contains("lynchet").doesNotContain("\tat ");
  }

  @ParameterizedTest
  @ValueSource(strings = {"--help", "plan --help", "check --help"})
  void help(String line) throws IOException, InterruptedException {
    Run run = Program.jar().run(folder, line.split(" "));
    assertThat(run.exitCode()).isZero();
    assertThat(run.err()).isEmpty();
    assertThat(run.out()).contains("Exit codes", "0", "1", "2", "3", "Example");
    assertThat(run.out().lines()).allSatisfy(l -> assertThat(l).hasSizeLessThan(101));
  }

  @Test
  void version() throws IOException, InterruptedException {
    Run run = Program.jar().run(folder, "--version");
    assertThat(run.exitCode()).isZero();
    assertThat(run.out()).matches("lynchet \\d+\\.\\d+\\.\\d+\\S*\\R");
  }
}
