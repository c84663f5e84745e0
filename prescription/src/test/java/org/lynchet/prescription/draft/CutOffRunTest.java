package org.lynchet.prescription.draft;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.lynchet.prescription.fault.RejectedException;

/** States that a run leaves when it is killed between two moves, made by hand. */
class CutOffRunTest {
  @TempDir Path folder;
  private Path out = Path.of("");

  @BeforeEach
  void nameTheTarget() {
    out = folder.resolve("out");
  }

  @Test
  void theOldFolderIsPutBackWhereNothingIs() throws IOException, RejectedException {
    Path held = heldFolder();
    assertThat(CutOffRun.mend(out)).singleElement().asString().contains("cut off", out.toString());
    assertThat(out.resolve("a")).hasContent("old");
    assertThat(held).doesNotExist();
    assertThat(names()).containsExactly("out");
    assertThat(CutOffRun.mend(out)).isEmpty();
  }

  @Test
  void anEmptyFolderIsNothing() throws IOException, RejectedException {
    heldFolder();
    Files.createDirectory(out);
    assertThat(CutOffRun.mend(out)).hasSize(1);
    assertThat(out.resolve("a")).hasContent("old");
    assertThat(names()).containsExactly("out");
  }

  @Test
  void whereTheNewFolderIsInPlaceTheOldIsRemoved() throws IOException, RejectedException {
    heldFolder();
    Files.createDirectory(out);
    Files.writeString(out.resolve("a"), "new");
    assertThat(CutOffRun.mend(out)).isEmpty();
    assertThat(out.resolve("a")).hasContent("new");
    assertThat(names()).containsExactly("out");
  }

  /** The output folder is a link to another disk: that one is written to, and the link stays. */
  @Test
  void aLinkToAFolderLeadsToItStill() throws IOException, RejectedException {
    Path usb = Files.createDirectory(folder.resolve("usb"));
    Path real = Files.createDirectory(usb.resolve("real"));
    Files.writeString(real.resolve("a"), "old");
    Files.createSymbolicLink(out, Path.of("usb/real"));
    try (Draft draft = Draft.beside(out)) {
      Files.writeString(draft.folder().resolve("a"), "new");
      draft.moveFolderIntoPlace();
    }
    assertThat(out).isSymbolicLink();
    assertThat(real.resolve("a")).hasContent("new");
    assertThat(usb).isDirectoryContaining(real::equals);
    Files.move(real, SetAside.beside(real).of(real));
    assertThat(CutOffRun.mend(out)).hasSize(1);
    assertThat(out.resolve("a")).hasContent("new");
    assertThat(usb.toFile().list()).containsExactly("real");
  }

  /** Killed before the first move: what is set aside is still empty. */
  @Test
  void whatHoldsNothingIsRemoved() throws IOException, RejectedException {
    Files.createDirectory(out);
    SetAside.beside(out);
    assertThat(CutOffRun.mend(out)).isEmpty();
    assertThat(names()).containsExactly("out");
  }

  /** Killed while it wrote the note: there is nothing in it to lose. */
  @Test
  void whatHasOnlyTheBeginningOfANoteIsRemoved() throws IOException, RejectedException {
    Files.createDirectories(folder.resolve(".out-old-1/files"));
    Files.createDirectories(folder.resolve(".out-old-2"));
    Files.writeString(folder.resolve(".out-old-2/what-this-is.txt"), "Lynchet put");
    assertThat(CutOffRun.mend(out)).isEmpty();
    assertThat(names()).isEmpty();
  }

  /** Killed while it removed the old: that is not whole, and never put back. */
  @Test
  void whatIsBeingRemovedIsNotPutBack() throws IOException, RejectedException {
    heldFolder();
    Files.move(folder.resolve(".out-old-1"), folder.resolve(".out-gone-1"));
    assertThat(CutOffRun.mend(out)).isEmpty();
    assertThat(names()).isEmpty();
  }

  @Test
  void filesOfTheUserAreLeftAlone() throws IOException, RejectedException {
    Files.createDirectories(folder.resolve(".out-old-1/files/out"));
    Files.writeString(folder.resolve(".out-old-1/what-this-is.txt"), "mine");
    Files.createDirectories(folder.resolve(".out-gone-1"));
    Files.writeString(folder.resolve(".out-gone-1/mine"), "");
    Files.createDirectories(folder.resolve(".out-old-2x"));
    Files.writeString(folder.resolve(".out-old-3"), "mine");
    List<String> before = names();
    assertThat(CutOffRun.mend(out)).isEmpty();
    assertThat(names()).isEqualTo(before);
  }

  /** A file of the user's came to the place since. */
  @Test
  void whatIsInTheWayIsKept() throws IOException, RejectedException {
    heldFolder();
    Files.writeString(out, "mine");
    assertThat(CutOffRun.mend(out)).hasSize(2).last().asString().contains(".out-old-1");
    assertThat(out.resolve("a")).hasContent("old");
    assertThat(folder.resolve(".out-old-1/new/out")).hasContent("mine");
    assertThat(CutOffRun.mend(out)).isEmpty();
    assertThat(folder.resolve(".out-old-1/new/out")).hasContent("mine");
  }

  /** One of two files was replaced, the other was set aside only. */
  @Test
  void ofSeveralFilesAllAreTheOldOnesAgain() throws IOException, RejectedException {
    Path a = folder.resolve("a");
    Path b = folder.resolve("b");
    SetAside old = SetAside.beside(a);
    Files.writeString(old.of(a), "old a");
    Files.writeString(old.of(b), "old b");
    Files.writeString(a, "new a");
    assertThat(CutOffRun.mend(a)).first().asString().contains(a + ", " + b);
    assertThat(a).hasContent("old a");
    assertThat(b).hasContent("old b");
    assertThat(folder.resolve(".a-old-1/new/a")).hasContent("new a");
  }

  /** A single file is replaced in one step: nothing is set aside. */
  @Test
  void aSingleFileIsNeverMissing() throws IOException {
    Path file = Files.writeString(folder.resolve("a.zip"), "old");
    try (Draft draft = Draft.beside(file)) {
      Files.writeString(draft.folder().resolve("a.zip"), "new");
      Files.createDirectory(folder.resolve(".a.zip-old-1"));
      draft.moveFilesIntoPlace();
    }
    assertThat(file).hasContent("new");
    assertThat(names()).containsExactly(".a.zip-old-1", "a.zip");
  }

  private Path heldFolder() throws IOException {
    Path held = SetAside.beside(out).of(out);
    Files.createDirectory(held);
    Files.writeString(held.resolve("a"), "old");
    return held;
  }

  private List<String> names() throws IOException {
    try (Stream<Path> all = Files.list(folder)) {
      return all.map(path -> path.getFileName().toString()).sorted().toList();
    }
  }
}
