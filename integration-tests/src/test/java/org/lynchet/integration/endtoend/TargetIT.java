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

/** The output folder is written whole or left alone, and nothing is left beside it. */
class TargetIT {
  private static final GroundField FIELD = GroundField.of(-94.1, 42, 13, 60, 50);

  @TempDir Path folder;
  private Path plan = Path.of("");

  @BeforeEach
  void writePlan() throws IOException {
    plan = FIELD.writeInto(folder);
  }

  @Test
  void withoutOutGoesBesideThePlan() throws IOException, InterruptedException {
    Run run = Program.jar().run(folder, "plan", plan.toString());
    assertThat(run.exitCode()).as(run.toString()).isZero();
    assertThat(folder.resolve("plan/summary.json")).exists();
  }

  @Test
  void refusesWhatIsThereUnlessForced() throws IOException, InterruptedException {
    Path out = folder.resolve("out");
    assertThat(planInto(out).exitCode()).isZero();
    SortedMap<String, String> before = Folders.digests(folder);
    Run refused = planInto(out);
    assertThat(refused.exitCode()).isEqualTo(3);
    assertThat(FaultText.in(refused.err()))
        .anyMatch(fault -> (fault.allowed() + fault.next()).contains("--force"));
    assertThat(Folders.digests(folder)).isEqualTo(before);

    Files.writeString(plan, FIELD.plan().replace("34000 seeds/ac", "33000 seeds/ac"));
    assertThat(planInto(out, "--force").exitCode()).isZero();
    assertThat(Files.readString(out.resolve("plan.geojson"))).contains("33000");
    assertThat(folder.toFile().list()).hasSize(3); // plan, boundary, out
  }

  @Test
  void neverReplacesFilesOfOthers() throws IOException, InterruptedException {
    Path out = Files.createDirectory(folder.resolve("out"));
    Files.writeString(out.resolve("letter.txt"), "not ours");
    SortedMap<String, String> before = Folders.digests(folder);
    assertThat(planInto(out, "--force").exitCode()).isEqualTo(3);
    assertThat(Folders.digests(folder)).isEqualTo(before);
  }

  @Test
  void faultLeavesTheOldOutput() throws IOException, InterruptedException {
    Path out = folder.resolve("out");
    assertThat(planInto(out).exitCode()).isZero();
    Files.writeString(plan, FIELD.plan().replace("rows: 12", "rows: 0"));
    SortedMap<String, String> before = Folders.digests(folder);
    assertThat(planInto(out, "--force").exitCode()).isEqualTo(3);
    assertThat(Folders.digests(folder)).isEqualTo(before);
  }

  /** A file where a folder is wanted cannot be written into, by anyone. */
  @Test
  void unwritableTargetIsAFault() throws IOException, InterruptedException {
    Path file = Files.writeString(folder.resolve("file"), "");
    Run run = planInto(file.resolve("out"));
    assertThat(run.exitCode()).as(run.toString()).isEqualTo(3);
    assertThat(FaultText.in(run.err())).isNotEmpty();
    assertThat(folder.toFile().list()).hasSize(3); // plan, boundary, file
  }

  @Test
  void dryRunWritesNothing() throws IOException, InterruptedException {
    SortedMap<String, String> before = Folders.digests(folder);
    Run run = planInto(folder.resolve("out"), "--dry-run");
    assertThat(run.exitCode()).as(run.toString()).isZero();
    assertThat(run.out()).contains("corn", "soybean");
    assertThat(Folders.digests(folder)).isEqualTo(before);
    assertThat(folder.resolve("out")).doesNotExist();
  }

  @Test
  void quietPrintsNothing() throws IOException, InterruptedException {
    Run run = planInto(folder.resolve("out"), "--quiet");
    assertThat(run.exitCode()).isZero();
    assertThat(run.out()).isEmpty();
    assertThat(folder.resolve("out/summary.json")).exists();
  }

  private Run planInto(Path out, String... more) throws IOException, InterruptedException {
    String[] arguments = new String[4 + more.length];
    arguments[0] = "plan";
    arguments[1] = plan.toString();
    arguments[2] = "--out";
    arguments[3] = out.toString();
    System.arraycopy(more, 0, arguments, 4, more.length);
    return Program.jar().run(folder, arguments);
  }
}
