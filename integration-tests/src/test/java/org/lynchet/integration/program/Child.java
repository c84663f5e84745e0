package org.lynchet.integration.program;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.concurrent.TimeUnit;
import java.util.function.BooleanSupplier;
import java.util.stream.Stream;

/** Runs one command to its end, or kills it when its time is over. */
public final class Child {
  private final List<String> command;
  private final Path folder;
  private final Map<String, String> environment = new LinkedHashMap<>();
  private Duration timeOut = Duration.ofMinutes(1);

  private Child(Path folder, List<String> command) {
    this.folder = folder;
    this.command = List.copyOf(command);
  }

  /** A command with its words, to be run in a folder. */
  public static Child of(Path folder, List<String> command) {
    return new Child(folder, command);
  }

  /** A command with its words, to be run in a folder. */
  public static Child of(Path folder, String... command) {
    return new Child(folder, List.of(command));
  }

  /** Sets a variable of its environment. */
  public Child withEnvironment(String name, String value) {
    environment.put(name, value);
    return this;
  }

  /** Sets how long it may take; 60 seconds if not set. */
  public Child withTimeOut(Duration most) {
    timeOut = most;
    return this;
  }

  /**
   * Runs it.
   *
   * @throws IOException if it cannot be started
   * @throws IllegalStateException if it took too long; it and its children are gone then
   */
  public Run run() throws IOException, InterruptedException {
    return run(process -> {});
  }

  /**
   * Runs it, and sends it a signal at a moment; it may have ended before.
   *
   * @param signal its name without SIG, as the command {@code kill} takes it
   * @param moment whether the moment has come; asked again and again
   * @throws IOException if it, or {@code kill}, cannot be started
   * @throws IllegalStateException as for {@link #run()}
   */
  public Run runAndSignal(String signal, BooleanSupplier moment)
      throws IOException, InterruptedException {
    return run(
        process -> {
          while (process.isAlive() && !moment.getAsBoolean()) {
            process.waitFor(1, TimeUnit.MILLISECONDS);
          }
          if (process.isAlive()) {
            Child.of(folder, "kill", "-" + signal, Long.toString(process.pid())).run();
          }
        });
  }

  /**
   * Runs it, and kills it at a moment, without starting another process for that; it may have ended
   * before. Its exit code is that of SIGKILL then.
   *
   * @param moment whether the moment has come; asked again and again without a pause
   * @throws IOException if it cannot be started
   * @throws IllegalStateException as for {@link #run()}
   */
  public Run runAndKill(BooleanSupplier moment) throws IOException, InterruptedException {
    return run(
        process -> {
          while (process.isAlive() && !moment.getAsBoolean()) {
            Thread.onSpinWait();
          }
          process.destroyForcibly();
        });
  }

  private Run run(Meanwhile meanwhile) throws IOException, InterruptedException {
    Path out = Files.createTempFile("child", ".out");
    Path err = Files.createTempFile("child", ".err");
    try {
      Process process = start(out, err);
      meanwhile.act(process);
      boolean ended = process.waitFor(timeOut.toMillis(), TimeUnit.MILLISECONDS);
      if (!ended) {
        kill(process);
      }
      Run run = new Run(command, ended ? process.exitValue() : -1, read(out), read(err));
      if (!ended) {
        throw new IllegalStateException("not done after " + timeOut + ": " + run);
      }
      return run;
    } finally {
      Files.delete(out);
      Files.delete(err);
    }
  }

  private interface Meanwhile {
    void act(Process process) throws IOException, InterruptedException;
  }

  private Process start(Path out, Path err) throws IOException {
    ProcessBuilder builder = new ProcessBuilder(new ArrayList<>(command));
    builder.directory(folder.toFile());
    builder.redirectOutput(out.toFile());
    builder.redirectError(err.toFile());
    builder.environment().putAll(environment);
    Process process = builder.start();
    process.getOutputStream().close();
    return process;
  }

  private static void kill(Process process) throws InterruptedException {
    try (Stream<ProcessHandle> children = process.descendants()) {
      children.forEach(ProcessHandle::destroyForcibly);
    }
    process.destroyForcibly().waitFor();
  }

  private static String read(Path file) throws IOException {
    return new String(Files.readAllBytes(file), StandardCharsets.UTF_8);
  }
}
