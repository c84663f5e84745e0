package org.lynchet.integration.endtoend;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.nio.file.FileSystem;
import java.nio.file.FileSystems;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.lynchet.integration.program.Program;
import org.lynchet.integration.program.Run;
import org.lynchet.integration.program.Tools;

/** The distribution, unpacked into a folder with a blank in its name and run by its launcher. */
class LauncherIT {
  @TempDir Path folder;

  @Test
  void firstAndSecondRunPlanTheExample() throws IOException, InterruptedException {
    Path home = unpack();
    Program launcher = Program.launcher(home.resolve("bin/lynchet"));
    Path plan = home.resolve("examples/sandhill-east/plan.yaml");
    for (String out : new String[] {"first", "second"}) {
      Path target = folder.resolve(out);
      Run run = launcher.run(folder, "plan", plan.toString(), "--out", target.toString());
      assertThat(run.exitCode()).as(run.toString()).isZero();
    }
    assertThat(Folders.digests(folder.resolve("second")))
        .isEqualTo(Folders.digests(folder.resolve("first")));
    assertThat(Program.jar().run(folder, "check", folder.resolve("first").toString()).exitCode())
        .isZero();
  }

  @Test
  void passesExitCodesOn() throws IOException, InterruptedException {
    Program launcher = Program.launcher(unpack().resolve("bin/lynchet"));
    assertThat(launcher.run(folder, "plow").exitCode()).isEqualTo(2);
    assertThat(launcher.run(folder, "plan", "nowhere.yaml").exitCode()).isEqualTo(3);
  }

  @Test
  void findsJavaByJavaHome() throws IOException, InterruptedException {
    Program launcher = Program.launcher(unpack().resolve("bin/lynchet"));
    Run run =
        launcher
            .child(folder, "--version")
            .withEnvironment("JAVA_HOME", System.getProperty("java.home", ""))
            .run();
    assertThat(run.exitCode()).as(run.toString()).isZero();
    assertThat(run.out()).startsWith("lynchet ");
  }

  @Test
  void holdsLauncherForWindowsLicencesAndExamples() throws IOException {
    Path home = unpack();
    assertThat(home.resolve("bin/lynchet")).isExecutable();
    assertThat(home.resolve("bin/lynchet.bat")).exists();
    assertThat(home.resolve("LICENSE")).exists();
    assertThat(home.resolve("NOTICE")).exists();
    assertThat(home.resolve("lib")).isDirectory();
    assertThat(home.resolve("examples/sandhill-east/plan.yaml")).exists();
  }

  /** Unpacks with the permissions that the archive holds; gives its only folder. */
  private Path unpack() throws IOException {
    Tools.assumeInstalled("sh");
    assumeTrue(Files.exists(Program.zip()), "the distribution is not built");
    Path target = Files.createDirectory(folder.resolve("a place"));
    Map<String, ?> posix = Map.of("enablePosixFileAttributes", true);
    try (FileSystem zip = FileSystems.newFileSystem(Program.zip(), posix);
        Stream<Path> entries = Files.walk(zip.getPath("/"))) {
      for (Path entry : (Iterable<Path>) entries::iterator) {
        copy(entry, target.resolve("." + entry).normalize());
      }
    }
    try (Stream<Path> top = Files.list(target)) {
      return top.filter(Files::isDirectory).findFirst().orElseThrow();
    }
  }

  private static void copy(Path entry, Path to) throws IOException {
    if (Files.isDirectory(entry)) {
      Files.createDirectories(to);
      return;
    }
    Files.copy(entry, to);
    Files.setPosixFilePermissions(to, Files.getPosixFilePermissions(entry));
  }
}
