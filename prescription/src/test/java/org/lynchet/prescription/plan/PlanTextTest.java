package org.lynchet.prescription.plan;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFileAttributeView;
import java.nio.file.attribute.PosixFilePermissions;
import org.junit.jupiter.api.Assumptions;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.lynchet.formats.Fault;
import org.lynchet.prescription.fault.RejectedException;

class PlanTextTest {
  @TempDir Path folder;

  private static Fault onlyFault(Path file) {
    RejectedException rejected =
        catchThrowableOfType(RejectedException.class, () -> PlanFile.read(file));
    assertThat(rejected.faults()).hasSize(1);
    Fault fault = rejected.faults().get(0);
    assertThat(fault.where()).isEqualTo(file.toString());
    assertThat(fault.allowed()).contains("YAML in UTF-8, at most 1 MB");
    return fault;
  }

  @Test
  void noSuchFile() {
    assertThat(onlyFault(folder.resolve("plan.yaml")).what()).isEqualTo("no such file");
  }

  @Test
  void aFolder() {
    assertThat(onlyFault(folder).what()).isEqualTo("this is a folder");
  }

  @Test
  void aFileThatMayNotBeRead() throws Exception {
    Path file = Files.writeString(folder.resolve("plan.yaml"), PlanTexts.SHORT);
    Assumptions.assumeTrue(
        Files.getFileAttributeView(file, PosixFileAttributeView.class) != null,
        "this file system has no permissions to take away");
    Files.setPosixFilePermissions(file, PosixFilePermissions.fromString("---------"));
    Assumptions.assumeFalse(Files.isReadable(file), "this user may read everything");
    assertThat(onlyFault(file).what()).isEqualTo("you may not read this file");
  }

  @Test
  void notUtf8() throws Exception {
    byte[] latin1 = "field: {name: Mühle}".getBytes(StandardCharsets.ISO_8859_1);
    Path file = Files.write(folder.resolve("plan.yaml"), latin1);
    assertThat(onlyFault(file).what()).isEqualTo("this is not UTF-8 text: byte 16");
  }

  @Test
  void aMegabyteIsReadAndABitMoreIsNot() throws Exception {
    String comment = "#".repeat(1_000_000 - PlanTexts.SHORT.length());
    assertThat(PlanTexts.faults(folder, PlanTexts.SHORT + comment)).isEmpty();
    Path file = Files.writeString(folder.resolve("plan.yaml"), PlanTexts.SHORT + comment + "#");
    assertThat(onlyFault(file).what()).isEqualTo("the file is larger than 1 MB");
  }
}
