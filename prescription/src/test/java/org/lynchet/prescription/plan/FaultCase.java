package org.lynchet.prescription.plan;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.regex.Pattern;
import org.lynchet.formats.Fault;

/**
 * One thing wrong in an otherwise good plan, and the one fault that tells it.
 *
 * @param find what is replaced in {@link PlanTexts#FULL}, once there
 * @param replacement what stands there instead; a § marks the place of the fault
 * @param key the keys that lead to the place
 * @param what part of what is wrong
 * @param advice part of what is allowed and what to do, which are joined by " | "
 */
record FaultCase(String find, String replacement, String key, String what, String advice) {

  /** The same change, whose fault stands elsewhere: at the value of a text that is there once. */
  FaultCase at(String text, String otherKey, String otherWhat, String otherAdvice) {
    String changed = PlanTexts.FULL.replace(find, replacement);
    int value = text.indexOf(": ") < 0 || text.startsWith("{") ? 0 : text.indexOf(": ") + 2;
    String marked = text.substring(0, value) + "§" + text.substring(value);
    assertThat(changed.split(Pattern.quote(text), -1)).hasSize(2);
    return new FaultCase(
        PlanTexts.FULL, changed.replace(text, marked), otherKey, otherWhat, otherAdvice);
  }

  /** The plan with the fault. */
  String text() {
    return PlanTexts.FULL.replace(find, replacement).replace("§", "");
  }

  void check(Path folder) throws IOException {
    assertThat(PlanTexts.FULL.split(Pattern.quote(find), -1)).hasSize(2);
    String marked = PlanTexts.FULL.replace(find, replacement);
    int at = marked.indexOf('§');
    String before = marked.substring(0, at);
    int line = 1 + (int) before.chars().filter(c -> c == '\n').count();
    int column = at - before.lastIndexOf('\n');
    List<Fault> faults = PlanTexts.faults(folder, text());
    assertThat(faults).hasSize(1);
    Fault fault = faults.get(0);
    assertThat(fault.where()).isEqualTo(("plan.yaml:" + line + ":" + column + " " + key).strip());
    assertThat(fault.what()).contains(what);
    assertThat(fault.allowed() + " | " + fault.next()).contains(advice);
  }

  @Override
  public String toString() {
    return key + ": " + what;
  }
}
