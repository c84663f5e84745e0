package org.lynchet.formats;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.io.OutputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.List;
import java.util.stream.Stream;

/** Runs a program that may or may not be on the machine. */
public final class ExternalTool {
  private ExternalTool() {}

  /** Skips the test with its reason unless the program runs with these arguments. */
  public static void assumeRuns(String... command) {
    String said;
    try {
      said = start("", command).exit == 0 ? "" : "fails";
    } catch (UncheckedIOException e) {
      said = "is not on this machine";
    }
    assumeTrue(said.isEmpty(), String.join(" ", command) + " " + said);
  }

  /** Runs the program; fails the test unless it ends well; returns what it printed. */
  public static String run(String... command) {
    return runWith("", command);
  }

  /** The same with something on its standard input. */
  public static String runWith(String input, String... command) {
    Result result = start(input, command);
    assertThat(result.exit).as(result.text).isZero();
    return result.text;
  }

  /** Runs a script with the Python that Debian's GDAL, shapely and pyshp belong to. */
  public static String python(String script, String... arguments) {
    List<String> command =
        Stream.concat(Stream.of("/usr/bin/python3", "-c", script), Arrays.stream(arguments))
            .toList();
    return run(command.toArray(new String[0]));
  }

  private static Result start(String input, String... command) {
    try {
      ProcessBuilder builder = new ProcessBuilder(command).redirectErrorStream(true);
      builder.environment().put("PYTHONWARNINGS", "ignore::DeprecationWarning");
      Process process = builder.start();
      try (OutputStream in = process.getOutputStream()) {
        in.write(input.getBytes(StandardCharsets.UTF_8));
      }
      String text = new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
      return new Result(process.waitFor(), text);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
      throw new IllegalStateException(e);
    }
  }

  private record Result(int exit, String text) {}
}
