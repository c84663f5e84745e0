package org.lynchet.prescription.fault;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

/** Text of files must not steer the terminal that shows it. */
class PrintableTextTest {
  @Test
  void whatDoesNotShowAsItselfIsWrittenAsANumber() {
    assertThat(PrintableText.oneLine("a\u001B[2Jb\u009B1mc\u202Ed\u0007\u007F\uD800"))
        .isEqualTo("a\\u001B[2Jb\\u009B1mc\\u202Ed\\u0007\\u007F\\uD800");
  }

  @Test
  void breaksBecomeSpaces() {
    assertThat(PrintableText.oneLine("a\nFault:\r\tb")).isEqualTo("a Fault:  b");
  }

  @Test
  void allOtherTextIsAsItIs() {
    String text = "Feld Süd \u0646\u200C\u06CC \uD83C\uDF3D \\ '\"";
    assertThat(PrintableText.oneLine(text)).isEqualTo(text);
  }
}
