package org.lynchet.integration.bench;

import java.io.IOException;
import java.nio.charset.StandardCharsets;

/** Runs the yardstick that is a script outside this project. */
final class ScriptYardstick {
  private ScriptYardstick() {}

  /**
   * Fields a second over all files of a folder.
   *
   * @param script the script; see script-yardstick.sh for what it must take and print
   */
  static double fieldsPerSecond(String script, String folder)
      throws IOException, InterruptedException {
    Process process =
        new ProcessBuilder("sh", "src/bench/script-yardstick.sh", script, folder)
            .redirectError(ProcessBuilder.Redirect.INHERIT)
            .start();
    String line =
        new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8).strip();
    if (process.waitFor() != 0) {
      throw new IOException("script-yardstick.sh failed");
    }
    return Double.parseDouble(line.substring(line.lastIndexOf(' ') + 1));
  }
}
