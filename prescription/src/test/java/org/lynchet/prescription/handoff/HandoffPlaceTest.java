package org.lynchet.prescription.handoff;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.lynchet.prescription.zone.SamplePlans.cornAndSoybean;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.lynchet.prescription.fault.RejectedException;

/** Where an output may be written, and what is left where it may not. */
class HandoffPlaceTest {
  @TempDir Path folder;

  @Test
  void replacesAnEarlierOutputOnlyWhenForced() throws Exception {
    Path out = folder.resolve("out");
    SampleOutput.write(cornAndSoybean(), out);
    assertThat(SampleOutput.placeFaults(out, false))
        .singleElement()
        .asString()
        .contains("there already");
    assertThat(SampleOutput.placeFaults(out, true)).isEmpty();
    SampleOutput.write(cornAndSoybean().offZones(), out);
    assertThat(FolderCheck.check(out)).isPositive();
    try (Stream<Path> beside = Files.list(folder)) {
      assertThat(beside).containsExactly(out);
    }
  }

  @Test
  void neverReplacesFilesOfTheUsers() throws Exception {
    Path out = folder.resolve("out");
    SampleOutput.write(cornAndSoybean(), out);
    Files.writeString(out.resolve("notes.txt"), "mine");
    assertThat(SampleOutput.placeFaults(out, true))
        .singleElement()
        .asString()
        .contains("notes.txt");
    assertThat(SampleOutput.placeFaults(folder, true)).isNotEmpty();
  }

  @Test
  void aFileInThePlaceIsAFault() throws IOException {
    Path file = Files.writeString(folder.resolve("taken"), "mine");
    assertThat(SampleOutput.placeFaults(file, true))
        .singleElement()
        .asString()
        .contains("is a file");
  }

  @Test
  void anUnwritablePlaceIsAFaultAndLeavesNothing() throws Exception {
    Path file = Files.writeString(folder.resolve("taken"), "mine");
    assertThatThrownBy(() -> SampleOutput.write(cornAndSoybean(), file.resolve("out")))
        .isInstanceOf(RejectedException.class)
        .hasMessageContaining("cannot write");
    try (Stream<Path> beside = Files.list(folder)) {
      assertThat(beside).containsExactly(file);
    }
  }
}
