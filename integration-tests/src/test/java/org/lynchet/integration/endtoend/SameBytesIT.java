package org.lynchet.integration.endtoend;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.SortedMap;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.lynchet.integration.program.Program;
import org.lynchet.integration.program.Run;

/** Same input, same bytes: whenever, wherever, and in whatever language the machine speaks. */
class SameBytesIT {
  @TempDir Path folder;

  @Test
  void machineDoesNotShowInTheFiles() throws IOException, InterruptedException {
    Example example = Example.copyInto(folder);
    Path elsewhere = Files.createDirectory(folder.resolve("elsewhere"));
    SortedMap<String, String> first = plan(Program.jar(), example, folder, "first");
    List<String> otherMachine =
        List.of(
            "-Duser.language=tr",
            "-Duser.country=TR",
            "-Duser.timezone=Pacific/Auckland",
            "-Dfile.encoding=ISO-8859-1",
            "-XX:hashCode=2");
    SortedMap<String, String> second =
        plan(Program.jar(experimental(otherMachine)), example, elsewhere, "second");
    assertThat(second).isEqualTo(first);
  }

  private SortedMap<String, String> plan(Program program, Example example, Path from, String out)
      throws IOException, InterruptedException {
    Path target = folder.resolve(out);
    Run run = program.run(from, "plan", example.plan().toString(), "--out", target.toString());
    assertThat(run.exitCode()).as(run.toString()).isZero();
    return Folders.digests(target);
  }

  /** Another identity hash shows where an order hangs on it. */
  private static List<String> experimental(List<String> options) {
    List<String> all = new ArrayList<>(List.of("-XX:+UnlockExperimentalVMOptions"));
    all.addAll(options);
    return all;
  }
}
