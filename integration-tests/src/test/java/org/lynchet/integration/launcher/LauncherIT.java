package org.lynchet.integration.launcher;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import java.util.List;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.lynchet.integration.program.Child;
import org.lynchet.integration.program.Program;
import org.lynchet.integration.program.Run;

/** Finds Java, and passes everything on; from a folder with a blank in its name. */
class LauncherIT {
  private static final String THIS_JAVA = System.getProperty("java.home", "");

  @TempDir static Path shared;
  private static Distribution distribution = new Distribution(Path.of(""));

  @TempDir Path folder;

  @BeforeAll
  static void unpack() throws IOException {
    distribution = Distribution.unpack(Files.createDirectory(shared.resolve("a place")));
  }

  @Test
  void passesExitCodesAndOutputsOn() throws IOException, InterruptedException {
    Run version = quick("--version").run();
    assertThat(version.exitCode()).as(version.toString()).isZero();
    assertThat(version.out()).startsWith("lynchet ");
    assertThat(version.err()).isEmpty();
    assertThat(quick("plow").run().exitCode()).isEqualTo(2);
    Run noPlan = quick("plan", "no such *.yaml").run();
    assertThat(noPlan.exitCode()).isEqualTo(3);
    assertThat(noPlan.out()).isEmpty();
    assertThat(noPlan.err()).contains("no such *.yaml");
  }

  @Test
  void saysTheSameAsTheJar() throws IOException, InterruptedException {
    String plan = distribution.example().toString();
    Run byLauncher = quick("plan", plan, "--dry-run").run();
    Run byJar = Program.jar().run(folder, "plan", plan, "--dry-run");
    assertThat(byLauncher.out()).isEqualTo(byJar.outOrThrow());
    assertThat(byLauncher.err()).isEqualTo(byJar.err());
  }

  @Test
  void runsThroughSymbolicLinks() throws IOException, InterruptedException {
    Path tools = Files.createDirectory(shared.resolve("my tools"));
    Path absolute = Files.createSymbolicLink(shared.resolve("absolute"), distribution.launcher());
    Path relative = Files.createSymbolicLink(tools.resolve("lyn"), Path.of("../absolute"));
    for (Path link : List.of(absolute, relative)) {
      Run run = withoutArchive(Child.of(folder, link.toString(), "--version")).run();
      assertThat(run.outOrThrow()).startsWith("lynchet ");
    }
  }

  @Test
  void findsJavaOnThePathWithoutJavaHome() throws IOException, InterruptedException {
    Path java = fakeJava("17.0.1", "java on the path");
    Run run =
        quick("--version")
            .withEnvironment("JAVA_HOME", "")
            .withEnvironment("PATH", java + "/bin:" + System.getenv("PATH"))
            .run();
    assertThat(run.outOrThrow()).contains("java on the path");
  }

  @Test
  void javaHomeGoesBeforeThePath() throws IOException, InterruptedException {
    Path onPath = fakeJava("17.0.1", "java on the path");
    Run run = quick("--version").withEnvironment("PATH", onPath + "/bin:/usr/bin:/bin").run();
    assertThat(run.outOrThrow()).startsWith("lynchet ");
  }

  @Test
  void saysWhatToDoWithoutJava() throws IOException, InterruptedException {
    Run none =
        quick("--version")
            .withEnvironment("JAVA_HOME", "")
            .withEnvironment("PATH", folder.toString())
            .run();
    assertRefused(none, "Java was not found", "Install Java 17");
    Run wrongHome = quick("--version").withEnvironment("JAVA_HOME", folder.toString()).run();
    assertRefused(wrongHome, folder.toString(), "Set JAVA_HOME");
  }

  @Test
  void saysWhatToDoWithOldJava() throws IOException, InterruptedException {
    Path eleven = fakeJava("11.0.2", "runs");
    Run told = quick("--version").withEnvironment("JAVA_HOME", eleven.toString()).run();
    assertRefused(told, "is Java 11.0.2", "Install Java 17");
    Path eight = folder.resolve("eight");
    script(eight.resolve("bin/java"), "echo 'openjdk version \"1.8.0_302\"' >&2");
    Run asked = quick("--version").withEnvironment("JAVA_HOME", eight.toString()).run();
    assertRefused(asked, "is Java 1.8.0_302", "Install Java 17");
  }

  /** So that signals such as Ctrl-C reach the program: no shell is left between. */
  @Test
  void javaTakesThePlaceOfTheShell() throws IOException, InterruptedException {
    Path java = folder.resolve("jdk");
    Files.writeString(Files.createDirectory(java).resolve("release"), "JAVA_VERSION=\"17\"\n");
    script(java.resolve("bin/java"), "printf '%s\\n' $$ \"$@\"");
    Child child =
        Child.of(folder, "sh", "-c", "echo $$; exec \"$0\" plan 'a b' ''", launcherText());
    List<String> lines =
        withoutArchive(child)
            .withEnvironment("JAVA_HOME", java.toString())
            .withEnvironment("LYNCHET_JAVA_OPTS", "-Xmx2g -Dstar=*")
            .run()
            .outOrThrow()
            .lines()
            .toList();
    assertThat(lines.get(1)).isEqualTo(lines.get(0));
    assertThat(lines).endsWith(distribution.home() + "/lynchet.jar", "plan", "a b", "");
    assertThat(lines).containsSubsequence("-XX:+UseSerialGC", "-Xmx2g", "-Dstar=*", "-jar");
  }

  @Test
  void leavesTheChoiceOfCollectorToTheUser() throws IOException, InterruptedException {
    Run run = quick("--version").withEnvironment("LYNCHET_JAVA_OPTS", "-XX:+UseG1GC").run();
    assertThat(run.outOrThrow()).startsWith("lynchet ");
    assertThat(run.err()).isEmpty();
  }

  private static void assertRefused(Run run, String why, String whatNext) {
    assertThat(run.exitCode()).as(run.toString()).isEqualTo(1);
    assertThat(run.out()).isEmpty();
    assertThat(run.err()).contains(why).contains(whatNext);
    assertThat(run.err().lines()).allMatch(line -> line.startsWith("lynchet: "));
  }

  private static String launcherText() {
    return distribution.launcher().toString();
  }

  private Child quick(String... arguments) {
    return withoutArchive(distribution.run(folder, arguments));
  }

  private static Child withoutArchive(Child child) {
    return child.withEnvironment("LYNCHET_NO_CDS", "1").withEnvironment("JAVA_HOME", THIS_JAVA);
  }

  /** A folder that looks like a JDK and whose java prints a text. */
  private Path fakeJava(String version, String text) throws IOException {
    Path jdk = Files.createDirectory(folder.resolve("jdk-" + version));
    Files.writeString(jdk.resolve("release"), "JAVA_VERSION=\"" + version + "\"\n");
    script(jdk.resolve("bin/java"), "echo '" + text + "'");
    return jdk;
  }

  private static void script(Path file, String line) throws IOException {
    Files.createDirectories(file.getParent());
    Files.writeString(file, "#!/bin/sh\n" + line + "\n");
    Files.setPosixFilePermissions(file, PosixFilePermissions.fromString("rwxr-xr-x"));
  }
}
