package org.lynchet.integration.endtoend;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.lynchet.integration.program.Program;
import org.lynchet.integration.program.Run;

/** The command check sees whatever happened to a folder on its way. */
class CheckIT {
  @TempDir Path folder;
  private Path out = Path.of("");

  @BeforeEach
  void plan() throws IOException, InterruptedException {
    GroundField field = GroundField.of(-94.1, 42, 13, 60, 50);
    out = folder.resolve("out");
    String plan = field.writeInto(folder).toString();
    Run run = Program.jar().run(folder, "plan", plan, "--out", out.toString());
    assertThat(run.exitCode()).as(run.toString()).isZero();
  }

  @Test
  void silentOnWhatWasWrittenEvenElsewhere() throws IOException, InterruptedException {
    assertThat(check(out).exitCode()).isZero();
    Path copy = Folders.copy(out, folder.resolve("copy"));
    assertThat(check(copy).exitCode()).isZero();
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "planting/corn.dbf",
        "planting/corn.shp",
        "planting/soybean.shx",
        "planting/corn.prj",
        "plan.geojson",
        "guidance/passes.geojson",
      })
  void seesOneFlippedBit(String name) throws IOException, InterruptedException {
    Path file = out.resolve(name);
    byte[] bytes = Files.readAllBytes(file);
    bytes[bytes.length / 2] ^= 1;
    Files.write(file, bytes);
    Run run = check(out);
    assertThat(run.exitCode()).as(run.toString()).isEqualTo(3);
    assertThat(FaultText.in(run.err()))
        .anyMatch(fault -> fault.where().contains(file.getFileName().toString()));
  }

  @Test
  void seesEveryMissingFileAtOnce() throws IOException, InterruptedException {
    List<String> lost = List.of("corn.cpg", "soybean.prj");
    for (String name : lost) {
      Files.delete(out.resolve("planting").resolve(name));
    }
    Run run = check(out);
    assertThat(run.exitCode()).isEqualTo(3);
    for (String name : lost) {
      assertThat(FaultText.in(run.err())).anyMatch(fault -> fault.toString().contains(name));
    }
  }

  @Test
  void namesAFolderThatIsNoOutput() throws IOException, InterruptedException {
    Run run = check(Files.createDirectory(folder.resolve("empty")));
    assertThat(run.exitCode()).isEqualTo(3);
    assertThat(FaultText.in(run.err())).isNotEmpty();
  }

  private Run check(Path checked) throws IOException, InterruptedException {
    return Program.jar().run(folder, "check", checked.toString());
  }
}
