package org.lynchet.prescription.cli;

import java.io.PrintWriter;
import java.io.Writer;
import org.lynchet.prescription.fault.PrintableText;

/**
 * Passes on what a command prints, but for characters that do not show as themselves: words of
 * files must not steer the terminal. Ends of lines and tabs pass.
 */
final class PlainWriter extends Writer {
  private final PrintWriter to;

  private PlainWriter(PrintWriter to) {
    this.to = to;
  }

  static PrintWriter to(PrintWriter printer) {
    return new PrintWriter(new PlainWriter(printer));
  }

  @Override
  public void write(char[] buffer, int offset, int length) {
    StringBuilder plain = new StringBuilder(length);
    for (int i = offset; i < offset + length; i++) {
      char c = buffer[i];
      if (Character.isSurrogate(c) || c == '\t' || System.lineSeparator().indexOf(c) >= 0) {
        plain.append(c);
      } else {
        PrintableText.append(c, plain);
      }
    }
    to.print(plain);
  }

  @Override
  public void flush() {
    to.flush();
  }

  @Override
  public void close() {
    to.close();
  }
}
