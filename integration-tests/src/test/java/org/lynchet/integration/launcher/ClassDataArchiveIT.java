package org.lynchet.integration.launcher;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.FileTime;
import java.util.List;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.CompletionException;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.lynchet.integration.program.Run;

/** The class-data archive: made once, used after that, and never in the way. */
class ClassDataArchiveIT {
  /**
   * The launcher's own limit: seen to fail with Java 17 and to work with 25, by class+load logs.
   */
  private static final int KEEPS_CLASSES_IN_PATHS_WITH_BLANKS = 25;

  @TempDir static Path shared;
  private static Distribution distribution = new Distribution(Path.of(""));

  @TempDir Path folder;
  private Path cache = Path.of("");

  @BeforeAll
  static void unpack() throws IOException {
    // No blank: Java 17 keeps only its own classes in an archive when there is one.
    distribution = Distribution.unpack(shared);
  }

  @BeforeEach
  void nameCache() {
    cache = folder.resolve("a cache");
  }

  @Test
  void isMadeOnceAndUsedAfterThat() throws IOException, InterruptedException {
    assertRuns();
    Path archive = onlyArchive();
    FileTime made = Files.getLastModifiedTime(archive);
    Path log = folder.resolve("classes.txt");
    Run second =
        distribution
            .run(cache, "--version")
            .withEnvironment("LYNCHET_JAVA_OPTS", "-Xlog:class+load:file=" + log)
            .run();
    assertThat(second.outOrThrow()).startsWith("lynchet ");
    assertThat(onlyArchive()).isEqualTo(archive);
    assertThat(Files.getLastModifiedTime(archive)).isEqualTo(made);
    assertThat(Files.readAllLines(log))
        .anyMatch(line -> line.contains("cli.Lynchet source: shared objects file"))
        .anyMatch(line -> line.contains("picocli.CommandLine source: shared objects file"));
  }

  @Test
  void changesNothingThatIsPrinted() throws IOException, InterruptedException {
    String plan = distribution.example().toString();
    Run first = distribution.run(cache, "plan", plan, "--dry-run").run();
    Run second = distribution.run(cache, "plan", plan, "--dry-run").run();
    Run without =
        distribution
            .run(cache, "plan", plan, "--dry-run")
            .withEnvironment("LYNCHET_NO_CDS", "1")
            .run();
    assertThat(List.of(first.out(), second.out())).containsOnly(without.outOrThrow());
    assertThat(List.of(first.err(), second.err())).containsOnly(without.err());
  }

  @Test
  void isMadeAgainWhenAJarChanges() throws IOException, InterruptedException {
    assertRuns();
    Path jar = distribution.home().resolve("lynchet.jar");
    FileTime before = Files.getLastModifiedTime(jar);
    Files.setLastModifiedTime(jar, FileTime.fromMillis(before.toMillis() + 10_000));
    try {
      assertRuns();
      assertThat(inCache()).hasSize(2);
    } finally {
      Files.setLastModifiedTime(jar, before);
    }
  }

  @Test
  void mayBeMadeByTwoRunsAtOnce() throws IOException {
    List<CompletableFuture<Run>> runs =
        Stream.of(1, 2).map(n -> CompletableFuture.supplyAsync(this::runVersion)).toList();
    runs.forEach(run -> assertThat(run.join().outOrThrow()).startsWith("lynchet "));
    onlyArchive();
  }

  @Test
  void isDoneWithoutWhereItIsDamaged() throws IOException, InterruptedException {
    assertRuns();
    Path archive = onlyArchive();
    Files.delete(archive);
    Files.writeString(archive, "not an archive");
    assertRuns();
  }

  @Test
  void isDoneWithoutWhereTheCacheCannotBe() throws IOException, InterruptedException {
    cache = Files.writeString(folder.resolve("file"), "").resolve("cache");
    assertRuns();
    assertThat(folder.resolve("file")).isRegularFile();
  }

  @Test
  void isNotTriedAgainAtOnceWhenItFailed() throws IOException, InterruptedException {
    assertRuns();
    Path failed = Path.of(onlyArchive() + ".failed");
    Files.delete(onlyArchive());
    Files.createFile(failed);
    assertRuns();
    assertThat(inCache()).containsExactly(failed);
    Files.setLastModifiedTime(failed, FileTime.fromMillis(0));
    assertRuns();
    onlyArchive();
  }

  @Test
  void isNotMadeWhenNotWanted() throws IOException, InterruptedException {
    Run run = distribution.run(cache, "--version").withEnvironment("LYNCHET_NO_CDS", "1").run();
    assertThat(run.outOrThrow()).startsWith("lynchet ");
    assertThat(cache).doesNotExist();
  }

  @Test
  void isNotMadeInAFolderWithABlankByJavaThatCouldNotUseIt()
      throws IOException, InterruptedException {
    Distribution blank = Distribution.unpack(Files.createDirectory(folder.resolve("a place")));
    assertThat(blank.run(cache, "--version").run().outOrThrow()).startsWith("lynchet ");
    if (Runtime.version().feature() < KEEPS_CLASSES_IN_PATHS_WITH_BLANKS) {
      assertThat(cache).doesNotExist();
    } else {
      onlyArchive();
    }
  }

  private void assertRuns() throws IOException, InterruptedException {
    Run run = distribution.run(cache, "--version").run();
    assertThat(run.outOrThrow()).startsWith("lynchet ");
    assertThat(run.err()).isEmpty();
  }

  private Run runVersion() {
    try {
      return distribution.run(cache, "--version").run();
    } catch (IOException | InterruptedException e) {
      throw new CompletionException(e);
    }
  }

  /** The archive; nothing else may be left in the cache. */
  private Path onlyArchive() throws IOException {
    List<Path> all = inCache();
    assertThat(all).hasSize(1).allMatch(file -> file.toString().endsWith(".jsa"));
    return all.get(0);
  }

  private List<Path> inCache() throws IOException {
    try (Stream<Path> files = Files.list(cache.resolve("lynchet"))) {
      return files.sorted().toList();
    }
  }
}
