package org.lynchet.prescription.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Objects;
import java.util.regex.Pattern;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.lynchet.prescription.plan.HandoffChoices.Format;

/** The help texts, looked at without blanks and line ends, have every format of the list. */
class FormatWordsTest {
  private static String help(String command) {
    return Objects.requireNonNull(Lynchet.commandLine().getSubcommands().get(command))
        .getUsageMessage()
        .replaceAll("\\s+", "");
  }

  @ParameterizedTest
  @EnumSource(Format.class)
  void offersEachFormat(Format format) {
    assertThat(help("plan")).containsPattern("handoff.formats:([a-z]+,)*" + format + "[,.]");
    assertThat(help("convert"))
        .containsPattern("--to=FORMATOneof([a-z]+,)*" + format + "[,.]")
        .containsPattern("Thenewfile:([.a-z]+,)*" + Pattern.quote(format.file().ending()) + ",")
        .contains(format.file().readEndings());
  }
}
