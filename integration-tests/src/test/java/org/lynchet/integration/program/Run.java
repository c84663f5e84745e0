package org.lynchet.integration.program;

import java.util.List;

/**
 * What a child left when it ended.
 *
 * @param command its words
 * @param exitCode as the operating system gives it
 * @param out its standard output
 * @param err its standard error
 */
public record Run(List<String> command, int exitCode, String out, String err) {

  /** The standard output of a child that must succeed. */
  public String outOrThrow() {
    if (exitCode != 0) {
      throw new IllegalStateException(toString());
    }
    return out;
  }

  @Override
  public String toString() {
    return String.join(" ", command) + "\nexit code " + exitCode + "\n" + out + "\n" + err;
  }
}
