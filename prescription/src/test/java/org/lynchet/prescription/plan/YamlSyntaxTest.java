package org.lynchet.prescription.plan;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.lynchet.formats.Fault;

/** Goes through texts that are not the YAML of a plan. Rules of YAML: yaml.org, version 1.1. */
class YamlSyntaxTest {
  @TempDir Path folder;

  @ParameterizedTest(name = "{0}")
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '`',
      value = {
        "an open bracket          | a: [1, 2             | :1:9    | expected ',' or ']'",
        "an open quote            | a: 1;b: \"x          | :2:6    | unexpected end of stream",
        "two values               | a: b: c              | :1:5    | mapping values are not allowed",
        "too far to the right     | a: 1;   b: 2         | :2:5    | mapping values are not allowed",
        "a tab                    | a: 3;\tb: 3          | :2:1    | '\\t(TAB)'",
        "a forbidden character    | a: 1;b: x\u0007y     | :2:5    | '\\u0007' is not allowed",
        "a list for a key         | ? [a, b];: 3         | :1:4    | a key is not a plain text",
        "an alias for a key       | *x : 3               | :1:3    | a key is not a plain text",
        "an unknown anchor        | a: *x                | :1:4 a  | anchors (&) and aliases (*)",
        "an anchor and its alias  | a: &x {b: 1};c: *x   | :1:4 a  | anchors (&) and aliases (*)",
        "an alias of a text       | a: &x 3;b: [*x]      | :2:5 b[0] | anchors (&) and aliases (*)",
        "a list                   | - a                  | :1:1    | the plan is a list",
        "a word                   | plan                 | :1:1    | the plan is 'plan'",
        "only a comment           | # nothing            | ``      | the plan is empty",
        "two documents            | a: 1;---;b: 2        | :3:1    | a second document begins here"
      })
  void placesAndReasons(String name, String lines, String place, String what) throws IOException {
    Fault fault = PlanTexts.faults(folder, lines.replace(';', '\n')).get(0);
    assertThat(fault.where()).isEqualTo("plan.yaml" + place);
    assertThat(fault.what()).contains(what);
    assertThat(fault.what() + fault.allowed() + fault.next()).doesNotContain("snakeyaml");
  }

  @Test
  void anEmptyFile() throws IOException {
    assertThat(PlanTexts.faults(folder, ""))
        .extracting(Fault::what)
        .containsExactly("the plan is empty");
  }

  @Test
  void aKeyTwice() throws IOException {
    String text = PlanTexts.SHORT + "guidance: {ab-line: {}}\n";
    Fault fault = PlanTexts.faults(folder, text).get(0);
    assertThat(fault.where()).isEqualTo("plan.yaml:6:1 guidance");
    assertThat(fault.what()).isEqualTo("the key 'guidance' is there twice");
    assertThat(fault.allowed()).contains("the other is in line 2");
  }

  /** Reading ends at a fixed depth, so that no text exhausts the stack. */
  @ParameterizedTest
  @CsvSource({"[", "'- '", "'{a: '", "'a: ['"})
  void deepNesting(String level) throws IOException {
    assertThat(PlanTexts.faults(folder, "x: " + level.repeat(200_000))).isNotEmpty();
    assertThat(PlanTexts.faults(folder, level.repeat(200_000))).isNotEmpty();
  }

  /** Aliases that double nine times over would make 2^9 and more values: they end at once. */
  @Test
  void aliasesDoNotMultiply() throws IOException {
    StringBuilder text = new StringBuilder("a0: &a0 [x, x]\n");
    for (int i = 1; i < 40; i++) {
      text.append("a%d: &a%d [*a%d, *a%d]\n".formatted(i, i, i - 1, i - 1));
    }
    assertThat(PlanTexts.faults(folder, text.toString()))
        .extracting(Fault::what)
        .containsExactly("anchors (&) and aliases (*) are not read");
  }

  /** Nothing of a file may move the terminal or fill it. */
  @Test
  void messagesAreShortAndPrintable() throws IOException {
    String key = "\"\\e[31m" + "k".repeat(900) + "\": 1\n";
    for (Fault fault : PlanTexts.faults(folder, PlanTexts.SHORT + key)) {
      String all = fault.what() + fault.where() + fault.allowed() + fault.next();
      assertThat(all).hasSizeLessThan(600).doesNotContain("\u001B").contains("\\u001B[31m");
    }
  }
}
