package org.lynchet.prescription.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.PrintWriter;
import java.io.StringWriter;
import java.util.Objects;
import java.util.regex.Pattern;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.lynchet.prescription.plan.HandoffChoices.Format;

/** The help texts, looked at without blanks and line ends, have every format of the list. */
class FormatWordsTest {
  private static String help(String command) {
    return Objects.requireNonNull(Lynchet.commandLine().getSubcommands().get(command))
        .getUsageMessage()
        .replaceAll("\\s+", "");
  }

  @ParameterizedTest
  @ValueSource(strings = {"plan p.yaml --format dxf", "convert a.csv b.dxf --to dxf"})
  void aFaultListsFormatsAsTheyAreWritten(String line) {
    StringWriter told = new StringWriter();
    int code = Lynchet.commandLine().setErr(new PrintWriter(told)).execute(line.split(" "));
    assertThat(code).isEqualTo(2);
    assertThat(told.toString())
        .contains("expected one of shapefile, geojson, geopackage, kml, isoxml, but was 'dxf'");
  }

  @ParameterizedTest
  @EnumSource(Format.class)
  void takesCapitalLetters(Format format) {
    assertThat(new OneOf<>(Format.class).convert(format.name())).isEqualTo(format);
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
