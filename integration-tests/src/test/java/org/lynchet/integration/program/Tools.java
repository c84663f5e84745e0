package org.lynchet.integration.program;

import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.File;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/** Looks for tools that a machine may or may not have. */
public final class Tools {
  /** The second is where Debian's own packages for Python can be seen. */
  private static final List<String> PYTHONS = List.of("python3", "/usr/bin/python3");

  private Tools() {}

  /** Whether a command is on the path. */
  public static boolean installed(String command) {
    String path = Optional.ofNullable(System.getenv("PATH")).orElse("");
    return Arrays.stream(path.split(File.pathSeparator))
        .filter(folder -> !folder.isEmpty())
        .anyMatch(folder -> Files.isExecutable(Path.of(folder, command)));
  }

  /** Skips the test, naming the command, unless it is on the path. */
  public static void assumeInstalled(String command) {
    assumeTrue(installed(command), command + " is not installed");
  }

  /** A Python that has a module; skips the test, naming the module, if there is none. */
  public static String pythonWith(String module) {
    Optional<String> python = PYTHONS.stream().filter(p -> hasModule(p, module)).findFirst();
    assumeTrue(python.isPresent(), "no python3 with the module " + module + " is installed");
    return python.orElseThrow();
  }

  private static boolean hasModule(String python, String module) {
    try {
      Path here = Path.of("").toAbsolutePath();
      return Child.of(here, python, "-c", "import " + module).run().exitCode() == 0;
    } catch (IOException e) {
      return false; // no such Python
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
      return false;
    }
  }
}
