package org.lynchet.prescription.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.PrintWriter;
import java.io.StringWriter;
import org.junit.jupiter.api.Test;

/** A bar is drawn where it is shown, and leaves nothing behind. */
class ProgressBarTest {
  private final StringWriter written = new StringWriter();

  @Test
  void growsAndGoes() {
    ProgressBar bar = ProgressBar.of(new PrintWriter(written), true);
    bar.show(1, 2);
    bar.show(1, 2);
    bar.show(2, 2);
    bar.clear();
    String half = "#".repeat(20) + ".".repeat(20);
    assertThat(written)
        .hasToString(
            "\r[%s] 50 %%\r[%s] 100 %%\r%s\r".formatted(half, "#".repeat(40), " ".repeat(49)));
  }

  @Test
  void saysNothingElsewhere() {
    ProgressBar bar = ProgressBar.of(new PrintWriter(written), false);
    bar.show(1, 1);
    bar.clear();
    assertThat(written.toString()).isEmpty();
  }
}
