package org.lynchet.prescription.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.PrintWriter;
import java.io.StringWriter;
import org.junit.jupiter.api.Test;

/** Results hold words of files. */
class PlainWriterTest {
  @Test
  void onlyWhatShowsAsItselfPasses() {
    StringWriter told = new StringWriter();
    PrintWriter printer = PlainWriter.to(new PrintWriter(told));
    printer.print("zone \u001B]0;x\u0007\tcorn \uD83C\uDF3D\n");
    printer.print('\u009B');
    printer.flush();
    assertThat(told).hasToString("zone \\u001B]0;x\\u0007\tcorn \uD83C\uDF3D\n\\u009B");
  }
}
