package org.lynchet.prescription.draft;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIOException;
import static org.assertj.core.api.Assumptions.assumeThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Holds files until all are whole, then moves all or none. */
class DraftTest {
  @TempDir Path folder;

  @Test
  void foldersAreMadeBelowADraft() throws IOException {
    Path lines = folder.resolve("spraying/lines");
    Draft.makeBelow(folder, lines);
    Draft.makeBelow(folder, lines);
    Draft.makeBelow(folder, folder);
    assertThat(lines).isEmptyDirectory();
  }

  /** Those who may read what others make there may read the output too. */
  @Test
  void anOutputFolderHasTheRightsOfOtherNewFolders() throws IOException {
    assumeThat(folder.getFileSystem().supportedFileAttributeViews()).contains("posix");
    Path usual = Files.createDirectory(folder.resolve("usual"));
    try (Draft draft = Draft.beside(folder.resolve("out"))) {
      draft.moveFolderIntoPlace();
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
        .isThrownBy(() -> Draft.makeBelow(draft, draft.resolve("spraying/lines")));
    Draft.makeBelow(draft, draft);
    assertThat(folder).isEmptyDirectory();
  }

  @Test
  void filesReplaceThoseOfTheirNamesAndNoOthers() throws IOException {
    Path other = Files.writeString(folder.resolve("other"), "other");
    Path old = Files.writeString(folder.resolve("b"), "old");
    try (Draft draft = Draft.beside(folder.resolve("a"))) {
      Files.writeString(draft.folder().resolve("a"), "new a");
      Files.writeString(draft.folder().resolve("b"), "new b");
      draft.moveFilesIntoPlace();
    }
    assertThat(folder.resolve("a")).hasContent("new a");
    assertThat(old).hasContent("new b");
    assertThat(other).hasContent("other");
    assertThat(names()).containsExactly("a", "b", "other");
  }

  /** A folder of the user's is no file to be replaced, even if it came after the check. */
  @Test
  void ifOneFileCannotBeMovedNoneIs() throws IOException {
    Files.writeString(folder.resolve("a"), "old");
    Files.createDirectories(folder.resolve("b/c"));
    try (Draft draft = Draft.beside(folder.resolve("a"))) {
      Files.writeString(draft.folder().resolve("a"), "new");
      Files.writeString(draft.folder().resolve("b"), "new");
      assertThatIOException().isThrownBy(draft::moveFilesIntoPlace).withMessageContaining("folder");
    }
    assertThat(folder.resolve("a")).hasContent("old");
    assertThat(folder.resolve("b/c")).isDirectory();
    assertThat(names()).containsExactly("a", "b");
  }

  @Test
  void movesBeforeOneThatIsRefusedAreTakenBack() throws IOException {
    Files.writeString(folder.resolve("a"), "a");
    Files.writeString(folder.resolve("b"), "b");
    Moves moves = new Moves();
    moves.add(folder.resolve("a"), folder.resolve("c"));
    moves.add(folder.resolve("b"), folder.resolve("a"));
    moves.add(folder.resolve("missing"), folder.resolve("d"));
    assertThatIOException()
        .isThrownBy(moves::run)
        .satisfies(refused -> assertThat(refused.getSuppressed()).isEmpty());
    assertThat(folder.resolve("a")).hasContent("a");
    assertThat(folder.resolve("b")).hasContent("b");
    assertThat(names()).containsExactly("a", "b");
  }

  @Test
  void foldersThatNothingCameIntoAreTakenAway() throws IOException {
    try (Draft draft = Draft.beside(folder.resolve("x/y/out"))) {
      Files.writeString(draft.folder().resolve("a"), "never moved");
    }
    assertThat(names()).isEmpty();
    try (Draft draft = Draft.beside(folder.resolve("x/y/out"))) {
      Files.writeString(draft.folder().resolve("a"), "moved");
      draft.moveFolderIntoPlace();
    }
    assertThat(folder.resolve("x/y/out/a")).hasContent("moved");
  }

  /** No words of Java's own. */
  @Test
  void aFileWhereAFolderHasToBeIsToldInWords() throws IOException {
    Path file = Files.writeString(folder.resolve("lf"), "");
    assertThatIOException()
        .isThrownBy(() -> Draft.beside(file.resolve("light.csv")))
        .satisfies(
            refused ->
                assertThat(Refusal.of(file, refused).what())
                    .isEqualTo("cannot write: a file is where a folder has to be: " + file));
    assertThat(names()).containsExactly("lf");
  }

  private List<String> names() throws IOException {
    try (Stream<Path> all = Files.list(folder)) {
      return all.map(path -> path.getFileName().toString()).sorted().toList();
    }
  }
}
