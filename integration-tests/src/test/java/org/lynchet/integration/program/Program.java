package org.lynchet.integration.program;

import java.io.IOException;
import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * The built program, run as a user runs it.
 *
 * <p>What is run is told by system properties that the build sets: {@code lynchet.jar}, {@code
 * lynchet.zip}, {@code lynchet.examples}.
 */
public final class Program {
  private static final Duration TIME_OUT = Duration.ofMinutes(2);

  private final List<String> start;

  private Program(List<String> start) {
    this.start = List.copyOf(start);
  }

  /** The jar, by {@code java -jar}; its manifest names the libraries beside it. */
  public static Program jar() {
    return jar(List.of());
  }

  /** The jar, with options for the Java virtual machine such as {@code -Duser.language=tr}. */
  public static Program jar(List<String> javaOptions) {
    List<String> start = new ArrayList<>();
    start.add(Path.of(System.getProperty("java.home", ""), "bin", "java").toString());
    start.addAll(javaOptions);
    start.add("-jar");
    start.add(property("lynchet.jar").toString());
    return new Program(start);
  }

  /** The launcher of an unpacked distribution. */
  public static Program launcher(Path script) {
    return new Program(List.of(script.toString()));
  }

  /** The same, its words appended to those of a command that will run it. */
  public Program behind(String... command) {
    List<String> longer = new ArrayList<>(List.of(command));
    longer.addAll(start);
    return new Program(longer);
  }

  /** The distribution. */
  public static Path zip() {
    return property("lynchet.zip");
  }

  /** The folder with one folder per example. */
  public static Path examples() {
    return property("lynchet.examples");
  }

  /** Runs one command line in a folder. */
  public Run run(Path folder, String... arguments) throws IOException, InterruptedException {
    return child(folder, arguments).run();
  }

  /** All words of one command line. */
  public List<String> words(String... arguments) {
    List<String> command = new ArrayList<>(start);
    command.addAll(List.of(arguments));
    return command;
  }

  /** One command line, not yet run, for tests that set its environment. */
  public Child child(Path folder, String... arguments) {
    return Child.of(folder, words(arguments)).withTimeOut(TIME_OUT);
  }

  private static Path property(String name) {
    return Optional.ofNullable(System.getProperty(name))
        .map(value -> Path.of(value).toAbsolutePath().normalize())
        .orElseThrow(() -> new IllegalStateException("-D" + name + " is not set"));
  }
}
