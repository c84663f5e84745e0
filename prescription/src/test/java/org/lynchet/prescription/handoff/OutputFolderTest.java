package org.lynchet.prescription.handoff;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIOException;
import static org.assertj.core.api.Assumptions.assumeThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class OutputFolderTest {
  @TempDir Path folder;

  @Test
  void foldersAreMadeBelowADraft() throws IOException {
    Path lines = folder.resolve("spraying/lines");
    OutputFolder.makeBelow(folder, lines);
    OutputFolder.makeBelow(folder, lines);
    OutputFolder.makeBelow(folder, folder);
    assertThat(lines).isEmptyDirectory();
  }

  /** Those who may read what others make there may read the output too. */
  @Test
  void anOutputFolderHasTheRightsOfOtherNewFolders() throws IOException {
    assumeThat(folder.getFileSystem().supportedFileAttributeViews()).contains("posix");
    Path usual = Files.createDirectory(folder.resolve("usual"));
    try (OutputFolder output = OutputFolder.beginFor(folder.resolve("out"))) {
      output.moveIntoPlace();
    }
    assertThat(Files.getPosixFilePermissions(folder.resolve("out")))
        .isEqualTo(Files.getPosixFilePermissions(usual));
  }

  /** Told to end, the program removes its draft while another thread still writes. */
  @Test
  void aDraftThatIsGoneIsNotMadeAnew() throws IOException {
    Path draft = Files.createDirectory(folder.resolve(".out-draft-1"));
    Files.delete(draft);
    assertThatIOException()
        .isThrownBy(() -> OutputFolder.makeBelow(draft, draft.resolve("spraying/lines")));
    OutputFolder.makeBelow(draft, draft);
    assertThat(folder).isEmptyDirectory();
  }
}
