package org.lynchet.integration.endtoend;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assumptions.assumeFalse;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.File;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Random;
import java.util.Set;
import java.util.SortedMap;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.lynchet.integration.program.Program;
import org.lynchet.integration.program.Run;
import org.lynchet.integration.program.Tools;

/**
 * Ended by a signal at any moment of writing, the output folder is the old one or the new one,
 * whole; and what is left beside it is in no later run's way.
 *
 * <p>A moment is a number of files in the draft. That does not hang on how fast the machine is.
 */
class SignalIT {
  private static final int TIMES = 25;
  private static final int INTERRUPTED = 128 + 2;
  private static final int KILLED = 128 + 9;

  @TempDir Path folder;
  private Path out = Path.of("");
  private final List<Path> plans = new ArrayList<>();
  private final List<SortedMap<String, String>> whole = new ArrayList<>();

  /** Two plans of one field, and what each of them writes when nobody disturbs. */
  @BeforeEach
  void writeOutputs() throws IOException, InterruptedException {
    Tools.assumeInstalled("kill");
    Path work = Files.createDirectory(folder.resolve("work"));
    out = work.resolve("out");
    Example example = Example.copyInto(folder);
    String text = Files.readString(example.plan());
    for (String rate : List.of("34000", "33000")) {
      Path plan = example.folder().resolve("plan-" + rate + ".yaml");
      plans.add(Files.writeString(plan, text.replace("34000", rate)));
      Path undisturbed = folder.resolve(rate);
      assertDone(plan(plan, undisturbed));
      assertDone(Program.jar().run(folder, "check", undisturbed.toString()));
      whole.add(Folders.digests(undisturbed));
    }
    assertThat(whole.get(0)).isNotEqualTo(whole.get(1));
  }

  /** Ctrl-C. */
  @Test
  void interrupted() throws IOException, InterruptedException {
    assumeFalse(interruptsAreIgnored(), "the tests were started with SIGINT ignored");
    assertThat(endAtRandomMoments("INT", INTERRUPTED)).isGreaterThan(TIMES / 2);
    assertThat(left()).isEmpty();
  }

  /** The power fails, as far as a process can tell. */
  @Test
  void killed() throws IOException, InterruptedException {
    assertThat(endAtRandomMoments("KILL", KILLED)).isGreaterThan(TIMES / 2);
    assertThat(left()).allMatch(name -> name.startsWith(".out-"));
  }

  /** Files that go into a folder of the user's are all there or none, and no draft is left. */
  @Test
  void lightInterrupted() throws IOException, InterruptedException {
    assumeFalse(interruptsAreIgnored(), "the tests were started with SIGINT ignored");
    Path light = Files.createDirectory(folder.resolve("light"));
    Path mine = Files.writeString(light.resolve("light.csv"), "mine");
    Run run =
        Program.jar()
            .child(
                folder, "light", plans.get(0).toString(), "--out", light + "", "--force", "--png")
            .runAndSignal("INT", () -> hasDraft(light));
    assertThat(run.exitCode()).as(run.toString()).isEqualTo(INTERRUPTED);
    assertThat(light).isDirectoryContaining(mine::equals);
    assertThat(light.toFile().list()).containsExactly("light.csv");
    assertThat(mine).hasContent("mine");
  }

  private static boolean hasDraft(Path folder) {
    String[] names = folder.toFile().list();
    return names != null && Arrays.stream(names).anyMatch(name -> name.startsWith("."));
  }

  /** How many of the runs were ended before they were done. */
  private int endAtRandomMoments(String signal, int code) throws IOException, InterruptedException {
    Random random = new Random(17);
    assertDone(plan(plans.get(0), out));
    int there = 0;
    int ended = 0;
    for (int i = 0; i < TIMES; i++) {
      int next = 1 - there;
      // Half of the moments are the last one: there the old folder gives way to the new.
      int all = whole.get(next).size();
      int files = random.nextBoolean() ? all : random.nextInt(all);
      Set<String> before = Set.copyOf(left());
      Run run =
          Program.jar()
              .child(folder, arguments(plans.get(next), out))
              .runAndSignal(signal, () -> draftHolds(files, before));
      String moment = signal + " at " + files + " files: " + run;
      assertThat(run.exitCode()).as(moment).isIn(0, code);
      assertThat(run.out() + run.err()).as(moment).isEmpty();
      ended += run.exitCode() == code ? 1 : 0;
      there = found(there, before, moment);
      assertThat(run.exitCode() == code || there == next).as(moment).isTrue();
    }
    assertDone(plan(plans.get(1 - there), out));
    assertThat(Folders.digests(out)).isEqualTo(whole.get(1 - there));
    assertDone(Program.jar().run(folder, "check", out.toString()));
    return ended;
  }

  /**
   * Which of the two outputs is in place.
   *
   * <p>No system call of Java's swaps two folders. Killed between two renames, the place is empty
   * and the old folder is beside it, whole; it is then moved back for the next run.
   */
  private int found(int there, Set<String> before, String moment) throws IOException {
    if (Files.exists(out)) {
      SortedMap<String, String> digests = Folders.digests(out);
      assertThat(digests).as(moment).isIn(whole);
      return whole.indexOf(digests);
    }
    List<String> old = left().stream().filter(n -> !before.contains(n) && isOld(n)).toList();
    assertThat(old).as(moment).hasSize(1);
    Path aside = out.resolveSibling(old.get(0));
    assertThat(Folders.digests(aside)).isEqualTo(whole.get(there));
    Files.move(aside, out);
    return there;
  }

  private static boolean isOld(String name) {
    return name.startsWith(".out-old-");
  }

  /** Whether the draft of this run, which was not there before, holds so many files. */
  private boolean draftHolds(int files, Set<String> before) {
    return left().stream()
        .filter(name -> !before.contains(name) && !isOld(name))
        .anyMatch(name -> files(out.resolveSibling(name).toFile()) >= files);
  }

  /** Counts the files below a folder that may go away meanwhile. */
  private static int files(File folder) {
    File[] entries = folder.listFiles();
    return entries == null
        ? 0
        : Arrays.stream(entries).mapToInt(e -> e.isDirectory() ? files(e) : 1).sum();
  }

  /** What lies beside the output folder. */
  private List<String> left() {
    String[] names = out.resolveSibling(".").toFile().list();
    return Stream.of(names == null ? new String[0] : names).filter(n -> !n.equals("out")).toList();
  }

  private Run plan(Path plan, Path target) throws IOException, InterruptedException {
    return Program.jar().run(folder, arguments(plan, target));
  }

  private static String[] arguments(Path plan, Path target) {
    return new String[] {"plan", plan.toString(), "--out", target.toString(), "--force", "--quiet"};
  }

  private static void assertDone(Run run) {
    assertThat(run.exitCode()).as(run.toString()).isZero();
  }

  /** The second bit of the signals that this process, and so its children, ignore: proc(5). */
  private static boolean interruptsAreIgnored() throws IOException {
    Path status = Path.of("/proc/self/status");
    assumeTrue(Files.exists(status), "no /proc/self/status: signals of this system are not known");
    return Files.readAllLines(status).stream()
        .filter(line -> line.startsWith("SigIgn:"))
        .map(line -> Long.parseUnsignedLong(line.substring("SigIgn:".length()).trim(), 16))
        .anyMatch(mask -> (mask & 2) != 0);
  }
}
