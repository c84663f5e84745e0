package org.lynchet.integration.endtoend;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.SortedMap;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.lynchet.integration.program.Program;
import org.lynchet.integration.program.Run;

/** What a run leaves that is killed between two moves, made by hand, and what commands do then. */
class CutOffIT {
  /** As the program writes it. */
  private static final String NOTE =
      """
      Lynchet put in 'files' what it was replacing, and was cut off before it was done.
      Run it again with the same target, or run 'lynchet check' on it: what is missing there is put
      back first. To do that by hand, move what is in 'files' beside this folder.
      """;

  @TempDir Path folder;
  private Path plan = Path.of("");
  private Path out = Path.of("");

  @BeforeEach
  void copyTheExample() throws IOException {
    plan = Example.copyInto(folder).plan();
    out = Files.createDirectory(folder.resolve("work")).resolve("out");
  }

  private Run run(String... words) throws IOException, InterruptedException {
    return Program.jar().run(folder, words);
  }

  private void assertDone(Run run) {
    assertThat(run.exitCode()).as(run.toString()).isZero();
  }

  /** Moves the output to where a run that was cut off leaves it. */
  private SortedMap<String, String> setAside() throws IOException {
    SortedMap<String, String> before = Folders.digests(out);
    Path aside = Files.createDirectories(out.resolveSibling(".out-old-1/files"));
    Files.writeString(aside.resolveSibling("what-this-is.txt"), NOTE);
    Files.move(out, aside.resolve("out"));
    return before;
  }

  private void assertOnlyTheOutput() {
    assertThat(out.resolveSibling("").toFile().list()).containsExactly("out");
  }

  @Test
  void checkPutsTheOldOutputBackAndSaysSo() throws IOException, InterruptedException {
    assertDone(run("plan", plan.toString(), "--out", out.toString(), "--quiet"));
    SortedMap<String, String> before = setAside();
    Run check = run("check", out.toString());
    assertDone(check);
    assertThat(check.err()).contains("cut off", "put back", out.toString());
    assertThat(Folders.digests(out)).isEqualTo(before);
    assertOnlyTheOutput();
    assertThat(run("check", out.toString()).err()).isEmpty();
  }

  @Test
  void planPutsTheOldOutputBackBeforeItAsksWhetherToReplaceIt()
      throws IOException, InterruptedException {
    assertDone(run("plan", plan.toString(), "--out", out.toString(), "--quiet"));
    SortedMap<String, String> before = setAside();
    Run refused = run("plan", plan.toString(), "--out", out.toString());
    assertThat(refused.exitCode()).isEqualTo(3);
    assertThat(refused.err()).contains("put back", "--force");
    assertThat(Folders.digests(out)).isEqualTo(before);
    setAside();
    assertDone(run("plan", plan.toString(), "--out", out.toString(), "--force"));
    assertThat(Folders.digests(out)).isEqualTo(before);
    assertOnlyTheOutput();
  }

  @Test
  void handoffPutsTheOldFolderBack() throws IOException, InterruptedException {
    String[] words = {"handoff", plan.toString(), "--to", "applicator", "--out", out.toString()};
    assertDone(run(words));
    SortedMap<String, String> before = setAside();
    assertThat(run(words).err()).contains("put back", "--force");
    assertThat(Folders.digests(out)).isEqualTo(before);
    assertOnlyTheOutput();
  }
}
