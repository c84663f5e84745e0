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
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.Set;
import java.util.SortedMap;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.lynchet.integration.program.Program;
import org.lynchet.integration.program.Run;
import org.lynchet.integration.program.Tools;
import org.lynchet.prescription.draft.CutOffRun;
import org.lynchet.prescription.fault.RejectedException;
import org.lynchet.prescription.handoff.FolderCheck;

/**
 * Ended by a signal at any moment of writing, the output folder is the old one or the new one,
 * whole, once {@code check} or the next run has looked at it; and what is left beside it is in no
 * later run's way.
 *
 * <p>Moments of writing are numbers of files in the draft, which do not hang on how fast the
 * machine is. Moments of moving come after the folder for what is set aside is there.
 */
class SignalIT {
  private static final int KILLS = 50;
  private static final int MOST_RUNS = 100;
  private static final int INTERRUPTS = 10;
  private static final int INTERRUPTED = 128 + 2;
  private static final int KILLED = 128 + 9;

  /** The moves, the removal of the old and the end of the program take about as long. */
  private static final int MOST_NANOSECONDS_OF_MOVING = 3_000_000;

  @TempDir static Path shared;
  @TempDir Path folder;
  private static Program program = Program.jar();
  private Path out = Path.of("");
  private final List<Path> plans = new ArrayList<>();
  private final List<SortedMap<String, String>> whole = new ArrayList<>();

  /** When a run is killed: the last is too short to be met each time. */
  private enum Moment {
    WRITING,
    MOVING,
    BETWEEN
  }

  /** What a kill left, before anything looked at it. */
  private enum Left {
    OLD,
    NEW,
    NOTHING
  }

  /** More than a hundred runs: each is three times as fast with its classes in an archive. */
  @BeforeAll
  static void archiveClasses() throws IOException, InterruptedException {
    Path archive = shared.resolve("classes.jsa");
    Example example = Example.copyInto(shared);
    assertDone(
        Program.jar(List.of("-XX:ArchiveClassesAtExit=" + archive))
            .run(shared, arguments(example.plan(), shared.resolve("out"))));
    program =
        Program.jar(
            List.of("-XX:SharedArchiveFile=" + archive, "-Xshare:auto", "-XX:TieredStopAtLevel=1"));
  }

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
      assertDone(program.run(folder, "check", undisturbed.toString()));
      whole.add(Folders.digests(undisturbed));
    }
    assertThat(whole.get(0)).isNotEqualTo(whole.get(1));
  }

  /** Ctrl-C. */
  @Test
  void interrupted() throws IOException, InterruptedException {
    assumeFalse(interruptsAreIgnored(), "the tests were started with SIGINT ignored");
    Random random = new Random(17);
    assertDone(plan(plans.get(0), out));
    int there = 0;
    int ended = 0;
    for (int i = 0; i < INTERRUPTS; i++) {
      int next = 1 - there;
      int files = random.nextInt(whole.get(next).size());
      Set<String> before = Set.copyOf(left());
      Run run =
          program
              .child(folder, arguments(plans.get(next), out))
              .runAndSignal("INT", () -> draftHolds(files, before));
      String moment = "interrupted at " + files + " files: " + run;
      assertThat(run.exitCode()).as(moment).isIn(0, INTERRUPTED);
      assertThat(run.out() + run.err()).as(moment).isEmpty();
      assertThat(Folders.digests(out)).as(moment).isIn(whole);
      assertThat(left()).as(moment).isEmpty();
      ended += run.exitCode() == INTERRUPTED ? 1 : 0;
      there = whole.indexOf(Folders.digests(out));
    }
    assertThat(ended).isGreaterThan(INTERRUPTS / 2);
  }

  /** The power fails, as far as a process can tell. */
  @Test
  void killed() throws IOException, InterruptedException, RejectedException {
    Random random = new Random(17);
    assertDone(plan(plans.get(0), out));
    int there = 0;
    int kills = 0;
    Map<Left, Integer> states = new EnumMap<>(Left.class);
    Set<Integer> counts = new TreeSet<>();
    int runs = 0;
    for (; kills < KILLS && runs < MOST_RUNS; runs++) {
      int next = 1 - there;
      Set<String> before = Set.copyOf(left());
      Moment kind = Moment.values()[random.nextInt(Moment.values().length)];
      int files = random.nextInt(whole.get(next).size());
      long wait = random.nextInt(MOST_NANOSECONDS_OF_MOVING);
      Run run =
          program
              .child(folder, arguments(plans.get(next), out))
              .runAndKill(
                  () ->
                      switch (kind) {
                        case WRITING -> draftHolds(files, before);
                        case MOVING -> hasSetAside(before) && waited(wait);
                        case BETWEEN -> !out.toFile().exists();
                      });
      String moment = kind + ", " + files + " files, " + wait + " ns: " + run;
      assertThat(run.exitCode()).as(moment).isIn(0, KILLED);
      assertThat(run.out() + run.err()).as(moment).isEmpty();
      Left left = state(there);
      if (run.exitCode() == KILLED) {
        kills++;
        states.merge(left, 1, Integer::sum);
        counts.add(mostFilesOfADraft(before));
      } else {
        assertThat(left).as(moment).isEqualTo(Left.NEW);
      }
      there = checked(there, left, moment);
    }
    assertThat(kills).isEqualTo(KILLS);
    // Drafts were found begun, half and whole; the old output was found, and the new.
    assertThat(counts).as("files in drafts").hasSizeGreaterThan(5);
    assertThat(states.getOrDefault(Left.OLD, 0)).as("" + states).isGreaterThan(KILLS / 5);
    assertThat(states.getOrDefault(Left.NEW, 0)).as("" + states).isGreaterThan(KILLS / 10);
    assertDone(plan(plans.get(1 - there), out));
    assertThat(Folders.digests(out)).isEqualTo(whole.get(1 - there));
    assertThat(left()).as("only drafts").allMatch(name -> name.startsWith(".out-draft-"));
  }

  /** Killed as it asks the system for the first move, the second, and so on: none is left out. */
  @Test
  void killedAtEachMove() throws IOException, InterruptedException, RejectedException {
    assumeTraced();
    assertDone(plan(plans.get(0), out));
    List<Left> states = new ArrayList<>();
    int there = 0;
    int code = KILLED;
    for (int move = 1; code == KILLED; move++) {
      Run run = killedAt("rename", move).run(folder, arguments(plans.get(1 - there), out));
      String moment = "move " + move + ": " + run;
      code = run.exitCode();
      assertThat(code).as(moment).isIn(0, KILLED);
      Left left = state(there);
      states.add(left);
      there = checked(there, left, moment);
    }
    // Before anything is set aside, between, before the old is given up, and not at all.
    assertThat(states).containsExactly(Left.OLD, Left.NOTHING, Left.NEW, Left.NEW);
  }

  /** Five files take the places of five; after the next run all are of one make. */
  @Test
  void severalFilesKilledAtEachMove() throws IOException, InterruptedException {
    assumeTraced();
    Path field = folder.resolve("sandhill-east/sandhill-east.geojson");
    Path soils = folder.resolve("sandhill-east/soils.geojson");
    Path made = Files.createDirectory(folder.resolve("converted"));
    String shp = made.resolve("field.shp").toString();
    List<SortedMap<String, String>> both = new ArrayList<>();
    for (Path from : List.of(soils, field)) {
      assertDone(program.run(folder, convert(from, shp, "--force")));
      both.add(Folders.digests(made));
    }
    assertThat(both.get(0)).isNotEqualTo(both.get(1));
    int code = KILLED;
    int move = 0;
    while (code == KILLED) {
      move++;
      Run run = killedAt("rename", move).run(folder, convert(soils, shp, "--force"));
      code = run.exitCode();
      assertThat(code).as(run.toString()).isIn(0, KILLED);
      Run refused = program.run(folder, convert(field, shp));
      assertThat(refused.exitCode()).as(refused.toString()).isEqualTo(3);
      SortedMap<String, String> found = Folders.digests(made);
      found.keySet().removeIf(name -> name.startsWith("."));
      assertThat(found).as("move " + move + refused).isEqualTo(both.get(code == KILLED ? 1 : 0));
      assertThat(refused.err().contains("put back")).isEqualTo(move > 1 && code == KILLED);
    }
    assertThat(move).isGreaterThan(2 * 5);
  }

  private static String[] convert(Path from, String to, String... more) {
    List<String> words = new ArrayList<>(List.of("convert", from.toString(), "--to", "shapefile"));
    words.add(to);
    words.addAll(List.of(more));
    return words.toArray(new String[0]);
  }

  /** The program, killed by the system when one of its threads makes that call so many times. */
  private static Program killedAt(String call, int times) {
    return program.behind(
        "strace",
        "-f",
        "-q",
        "-o",
        "/dev/null",
        "-e",
        "trace=/" + call,
        "-e",
        "inject=/" + call + ":signal=KILL:when=" + times);
  }

  private void assumeTraced() throws IOException, InterruptedException {
    Tools.assumeInstalled("strace");
    Run run = killedAt("rename", 1).run(folder, "--version");
    assumeTrue(run.exitCode() == 0, "strace may not trace here: " + run.err());
  }

  private Left state(int there) throws IOException {
    if (!Files.exists(out)) {
      return Left.NOTHING;
    }
    return Folders.digests(out).equals(whole.get(there)) ? Left.OLD : Left.NEW;
  }

  /** Whichever of the two is in place after {@code check} has looked at it: that one is whole. */
  private int checked(int there, Left left, String moment)
      throws IOException, InterruptedException, RejectedException {
    if (left == Left.NOTHING) {
      Run check = program.run(folder, "check", "--quiet", out.toString());
      assertThat(check.exitCode()).as(moment + left + check).isZero();
      assertThat(check.err()).contains("cut off", "put back", out.toString());
    } else {
      // What the command does, without starting a program for it.
      assertThat(CutOffRun.mend(out)).as(moment).isEmpty();
      assertThat(FolderCheck.check(out)).isPositive();
    }
    SortedMap<String, String> digests = Folders.digests(out);
    assertThat(digests).as(moment).isIn(whole);
    int found = whole.indexOf(digests);
    assertThat(found).as(moment).isEqualTo(left == Left.NEW ? 1 - there : there);
    return found;
  }

  private static boolean waited(long nanoseconds) {
    long end = System.nanoTime() + nanoseconds;
    while (System.nanoTime() < end) {
      Thread.onSpinWait();
    }
    return true;
  }

  /** Whether this run has made room for what it replaces. */
  private boolean hasSetAside(Set<String> before) {
    return left().stream().anyMatch(name -> !before.contains(name) && !isDraft(name));
  }

  private int mostFilesOfADraft(Set<String> before) {
    return left().stream()
        .filter(name -> !before.contains(name) && isDraft(name))
        .mapToInt(name -> files(out.resolveSibling(name).toFile()))
        .max()
        .orElse(-1);
  }

  /** Files that go into a folder of the user's are all there or none, and no draft is left. */
  @Test
  void lightInterrupted() throws IOException, InterruptedException {
    assumeFalse(interruptsAreIgnored(), "the tests were started with SIGINT ignored");
    Path light = Files.createDirectory(folder.resolve("light"));
    Path mine = Files.writeString(light.resolve("light.csv"), "mine");
    Run run =
        program
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

  private static boolean isDraft(String name) {
    return name.startsWith(".out-draft-");
  }

  /** Whether the draft of this run, which was not there before, holds so many files. */
  private boolean draftHolds(int files, Set<String> before) {
    return left().stream()
        .filter(name -> !before.contains(name) && isDraft(name))
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
    return program.run(folder, arguments(plan, target));
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
