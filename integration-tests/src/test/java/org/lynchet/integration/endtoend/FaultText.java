package org.lynchet.integration.endtoend;

import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * One fault as the program tells it on standard error, in four texts.
 *
 * @param what what is wrong
 * @param where file and place
 * @param allowed what is allowed there
 * @param next what to do
 */
record FaultText(String what, String where, String allowed, String next) {
  private static final Pattern FORM =
      Pattern.compile(
          "^Fault: (?<what>.+)\\R +where: +(?<where>.+)\\R +allowed: +(?<allowed>.+)\\R"
              + " +next: +(?<next>.+)$",
          Pattern.MULTILINE);

  /** All faults that a text tells, in order. */
  static List<FaultText> in(String err) {
    List<FaultText> faults = new ArrayList<>();
    Matcher fault = FORM.matcher(err);
    while (fault.find()) {
      faults.add(
          new FaultText(
              fault.group("what"),
              fault.group("where"),
              fault.group("allowed"),
              fault.group("next")));
    }
    return faults;
  }
}
