package org.lynchet.integration.launcher;

import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.nio.file.FileSystem;
import java.nio.file.FileSystems;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import java.util.stream.Stream;
import org.lynchet.integration.program.Child;
import org.lynchet.integration.program.Program;
import org.lynchet.integration.program.Tools;

/** The distribution, unpacked. */
record Distribution(Path home) {

  /** Unpacks the zip, with the permissions that it holds, into a new folder. */
  static Distribution unpack(Path target) throws IOException {
    Tools.assumeInstalled("sh");
    assumeTrue(Files.exists(Program.zip()), "the distribution is not built");
    Map<String, ?> posix = Map.of("enablePosixFileAttributes", true);
    try (FileSystem zip = FileSystems.newFileSystem(Program.zip(), posix);
        Stream<Path> entries = Files.walk(zip.getPath("/"))) {
      for (Path entry : (Iterable<Path>) entries::iterator) {
        copy(entry, target.resolve("." + entry).normalize());
      }
    }
    try (Stream<Path> top = Files.list(target)) {
      return new Distribution(top.findFirst().orElseThrow());
    }
  }

  private static void copy(Path entry, Path to) throws IOException {
    if (Files.isDirectory(entry)) {
      Files.createDirectories(to);
      return;
    }
    Files.copy(entry, to);
    Files.setLastModifiedTime(to, Files.getLastModifiedTime(entry));
    Files.setPosixFilePermissions(to, Files.getPosixFilePermissions(entry));
  }

  Path launcher() {
    return home.resolve("bin/lynchet");
  }

  Path example() {
    return home.resolve("examples/sandhill-east/plan.yaml");
  }

  /** One command line of the launcher, run in the home with this Java and a cache folder. */
  Child run(Path cache, String... arguments) {
    return Program.launcher(launcher())
        .child(home, arguments)
        .withEnvironment("JAVA_HOME", System.getProperty("java.home", ""))
        .withEnvironment("XDG_CACHE_HOME", cache.toString());
  }
}
