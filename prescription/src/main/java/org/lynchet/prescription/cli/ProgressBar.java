package org.lynchet.prescription.cli;

import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import picocli.CommandLine.Help.Ansi;

/** Shows on standard error how far a command is, if that is a terminal; else nothing. */
final class ProgressBar {
  private static final int WIDTH = 40;

  /** Where Linux tells what standard error is. */
  private static final Path STANDARD_ERROR = Path.of("/proc/self/fd/2");

  private final PrintWriter out;
  private final boolean shown;
  private int filled = -1;

  private ProgressBar(PrintWriter out, boolean shown) {
    this.out = out;
    this.shown = shown;
  }

  /** A bar for this process. */
  static ProgressBar onTerminal(PrintWriter out) {
    return new ProgressBar(out, isTerminal(STANDARD_ERROR));
  }

  /** A bar that is shown or not. */
  static ProgressBar of(PrintWriter out, boolean shown) {
    return new ProgressBar(out, shown);
  }

  /** Where the system does not tell, it is one if colours would be shown. */
  private static boolean isTerminal(Path link) {
    if (!Files.isSymbolicLink(link)) {
      return Ansi.AUTO.enabled();
    }
    try {
      String target = Files.readSymbolicLink(link).toString();
      return target.startsWith("/dev/pts/") || target.startsWith("/dev/tty");
    } catch (IOException e) {
      return false;
    }
  }

  /** Shows that so many of all steps are done. */
  void show(int done, int all) {
    int fill = WIDTH * done / all;
    if (shown && fill != filled) {
      filled = fill;
      String bar = "#".repeat(fill) + ".".repeat(WIDTH - fill);
      out.print("\r[" + bar + "] " + 100 * done / all + " %");
      out.flush();
    }
  }

  /** Takes the bar away again. */
  void clear() {
    if (shown) {
      out.print("\r" + " ".repeat(WIDTH + 9) + "\r");
      out.flush();
    }
  }
}
