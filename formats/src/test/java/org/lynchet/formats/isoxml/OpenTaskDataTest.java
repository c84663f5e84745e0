package org.lynchet.formats.isoxml;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.lynchet.formats.FormatException;

/**
 * Reads and checks open sets of task data, right and broken ones, that other projects test with
 * (Apache-2.0); they lie beside the folder of open field boundaries. What is wanted of each was
 * found by reading the files.
 */
class OpenTaskDataTest {

  @ParameterizedTest
  @CsvSource(
      delimiter = ';',
      value = {
        "Grid_Type1; 0; 0",
        "Grid_Type2; 0; 0",
        "Grid_Type1_Invalid; 0; 0",
        "Grid_Type2_Invalid; 0; 0",
        "IDList_Valid; 1; 0",
        "IDList_WrongIds; 2; 0",
        "ExternalFiles_OneExternal; 1; 0",
        "ExternalFiles_MultipleExternals; 1; 0",
        "Structure_DuplicatedIDs; 0; 0",
        "full_task; 2; 1",
        "duplicate-xmlid.zip; 0; 0",
        "grid-without-binary.zip; 0; 0",
      })
  void fieldsAndLinesAreReadWhereNothingKeepsThemFromIt(String name, int fields, int lines)
      throws FormatException {
    TaskSet set = TaskData.read(set(name));
    assertThat(set.partFields()).hasSize(fields);
    assertThat(set.partFields().stream().mapToInt(f -> f.lines().size()).sum()).isEqualTo(lines);
    assertThat(set.partFields())
        .allSatisfy(f -> assertThat(f.boundary().isEmpty() || f.boundary().isValid()).isTrue());
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = ';',
      value = {
        "ExternalFiles_MissingExternals; the external file CTR00001 is missing",
        "Structure_InvalidXML; not well-formed XML",
      })
  void whatCannotBeReadIsRefusedWithTheReason(String name, String reason) {
    Path set = set(name);
    FormatException refused = catchThrowableOfType(FormatException.class, () -> TaskData.read(set));
    assertThat(refused).isNotNull();
    assertThat(refused.faults()).anySatisfy(f -> assertThat(f.what()).contains(reason));
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = ';',
      value = {
        "Grid_Type1_Invalid; GRD00001.bin has 32 bytes",
        "Grid_Type2_Invalid; GRD00001.bin has 1200 bytes",
        "IDList_Valid; a ring that is not closed",
        "IDList_WrongIds; refers to CTR5",
        "ExternalFiles_MissingExternals; CTR00001 is missing",
        "Structure_DuplicatedIDs; the id VPN1 is there twice",
        "Structure_InvalidXML; not well-formed XML",
        "duplicate-xmlid.zip; the id CTP-1 is there twice",
        "grid-without-binary.zip; the file of grid 'GRD00001' is missing",
      })
  void theCheckNamesWhatIsBroken(String name, String fault) {
    assertThat(TaskData.check(set(name))).anySatisfy(f -> assertThat(f.what()).contains(fault));
  }

  private static Path set(String name) {
    String fields = System.getProperty("lynchet.fields", "");
    Path folder = Path.of(fields).resolveSibling("isoxml");
    assumeTrue(
        !fields.isEmpty() && Files.isDirectory(folder),
        "no folder isoxml beside the one that -Dlynchet.fields names");
    return folder.resolve(name);
  }
}
