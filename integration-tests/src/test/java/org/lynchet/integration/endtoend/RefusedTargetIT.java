package org.lynchet.integration.endtoend;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assumptions.assumeFalse;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import java.util.ArrayList;
import java.util.List;
import java.util.SortedMap;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.lynchet.integration.program.Program;
import org.lynchet.integration.program.Run;
import org.lynchet.integration.program.Tools;

/** A disk that is full, and places that take no files: one fault each, and nothing is changed. */
class RefusedTargetIT {
  private static final String MOUNT = "mount -t tmpfs -o size=$SIZE none \"$DISK\" && ";

  @TempDir Path folder;
  private Path plan = Path.of("");
  private Path work = Path.of("");

  @BeforeEach
  void copyExample() throws IOException {
    plan = Example.copyInto(folder).plan();
    work = Files.createDirectory(folder.resolve("work"));
  }

  /** A limit on the size of one file (setrlimit, RLIMIT_FSIZE), in blocks of 512 bytes. */
  @ParameterizedTest(name = "no file over {0} blocks")
  @ValueSource(ints = {100, 200, 290})
  void fileOutgrowsItsLimit(int blocks) throws IOException, InterruptedException {
    Tools.assumeInstalled("sh");
    Path out = work.resolve("out");
    assertThat(plan(out).exitCode()).isZero();
    SortedMap<String, String> before = Folders.digests(work);
    Program limited =
        Program.jar().behind("sh", "-c", "ulimit -f " + blocks + "; exec \"$@\"", "sh");
    Run run = limited.run(folder, arguments(out, "--force"));
    assertRefused(run, out, "File too large");
    assertThat(Folders.digests(work)).isEqualTo(before);
    assertThat(work.toFile().list()).containsExactly("out");
  }

  /** A file system of its own, seen by the child alone: filled by the first, middle, last file. */
  @ParameterizedTest(name = "disk of {0}")
  @ValueSource(strings = {"40k", "500k", "940k"})
  void diskIsFull(String size) throws IOException, InterruptedException {
    assumeOwnMounts();
    Path out = work.resolve("out");
    Run run = onDisk(size, "\"$@\"; code=$?; ls -A \"$DISK\"; exit $code", out);
    assertThat(run.out()).as("what is left on the disk").isEmpty();
    assertRefused(run, out, "No space left on device");
  }

  /** SQLite writes for itself and has words of its own. */
  @Test
  void diskIsFullOfAGeoPackage() throws IOException, InterruptedException {
    assumeOwnMounts();
    Path out = work.resolve("field.gpkg");
    String field = plan.resolveSibling("sandhill-east.geojson").toString();
    String script = "\"$@\"; code=$?; ls -A \"$DISK\"; exit $code";
    Run run = onDisk("40k", script, "convert", field, "--to", "geopackage", out.toString());
    assertThat(run.out()).as("what is left on the disk").isEmpty();
    assertRefused(run, out, "No space left on device");
  }

  /** An output in another one would make that one look damaged. */
  @Test
  void placeInAnotherOutput() throws IOException, InterruptedException {
    Path out = work.resolve("out");
    assertThat(plan(out).exitCode()).isZero();
    SortedMap<String, String> before = Folders.digests(work);
    assertRefused(plan(out.resolve("planting/x")), out.resolve("planting/x"), "an earlier run");
    Path zip = out.resolve("spray.zip");
    String[] handoff = {"handoff", plan.toString(), "--to", "applicator", "--out", zip.toString()};
    assertRefused(Program.jar().run(folder, handoff), zip, "an earlier run");
    assertThat(Folders.digests(work)).isEqualTo(before);
  }

  /** The same disk with room, or the test above would hold for any size. */
  @Test
  void diskIsLargeEnough() throws IOException, InterruptedException {
    assumeOwnMounts();
    Run run = onDisk("4m", "exec \"$@\"", work.resolve("out"));
    assertThat(run.exitCode()).as(run.toString()).isZero();
  }

  @Test
  void folderMayNotBeWrittenTo() throws IOException, InterruptedException {
    Files.setPosixFilePermissions(work, PosixFilePermissions.fromString("r-xr-xr-x"));
    assumeFalse(Files.isWritable(work), "this user may write anywhere");
    assertRefused(plan(work.resolve("out")), work, "cannot write");
  }

  /** Nobody may make a folder there, the system's administrator neither. */
  @Test
  void folderOfTheSystem() throws IOException, InterruptedException {
    Path proc = Path.of("/proc/self");
    assumeTrue(Files.exists(proc), "no /proc");
    Path out = proc.resolve("out/out");
    assertRefused(plan(out), out, "cannot write");
  }

  /** A device that is always full: full(4) of the Linux manual pages. */
  @Test
  void standardOutputIsFull() throws IOException, InterruptedException {
    assumeTrue(Files.exists(Path.of("/dev/full")), "no /dev/full");
    Tools.assumeInstalled("sh");
    Run run =
        Program.jar()
            .behind("sh", "-c", "exec \"$@\" > /dev/full", "sh")
            .run(folder, "plan", plan.toString(), "--dry-run");
    assertThat(run.exitCode()).as(run.toString()).isEqualTo(1);
    assertThat(run.err()).contains("Not all results could be written").doesNotContain("\tat ");
  }

  private static void assertRefused(Run run, Path where, String why) {
    assertThat(run.exitCode()).as(run.toString()).isEqualTo(3);
    assertThat(run.err()).doesNotContain("\tat ").doesNotContain("Exception");
    assertThat(FaultText.in(run.err()))
        .singleElement()
        .satisfies(fault -> assertThat(fault.what()).contains(why))
        .satisfies(fault -> assertThat(fault.where()).isEqualTo(where.toString()));
  }

  private Run plan(Path out) throws IOException, InterruptedException {
    return Program.jar().run(folder, arguments(out));
  }

  private String[] arguments(Path out, String... more) {
    List<String> words = new ArrayList<>(List.of("plan", plan.toString(), "--quiet", "--out"));
    words.add(out.toString());
    words.addAll(List.of(more));
    return words.toArray(new String[0]);
  }

  /** Runs a shell script, its words the program's, where the folder is a disk of a size. */
  private Run onDisk(String size, String script, Path out)
      throws IOException, InterruptedException {
    return onDisk(size, script, arguments(out));
  }

  private Run onDisk(String size, String script, String... arguments)
      throws IOException, InterruptedException {
    return Program.jar()
        .behind("unshare", "-rm", "sh", "-c", MOUNT + script, "sh")
        .child(folder, arguments)
        .withEnvironment("SIZE", size)
        .withEnvironment("DISK", work.toString())
        .run();
  }

  private void assumeOwnMounts() throws IOException, InterruptedException {
    Tools.assumeInstalled("unshare");
    Run run = onDisk("40k", "true", work);
    assumeTrue(run.exitCode() == 0, "no file systems of one's own here: " + run.err());
  }
}
