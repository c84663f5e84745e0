package org.lynchet.prescription.handoff;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.lynchet.prescription.zone.SamplePlans.cornAndSoybean;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.lynchet.prescription.fault.RejectedException;
import org.lynchet.prescription.summary.WrittenFile;

/** What is found when an output is looked at later. */
class FolderCheckTest {
  @TempDir Path folder;

  @ParameterizedTest
  @ValueSource(
      strings = {
        "plan.geojson",
        "planting/corn.dbf",
        "planting/corn.shp",
        "planting/corn.shx",
        "planting/corn.prj",
        "guidance/passes.geojson",
        "map.svg"
      })
  void aFlippedByteIsFound(String path) throws Exception {
    Path out = folder.resolve("out");
    SampleOutput.write(cornAndSoybean(), out);
    byte[] bytes = Files.readAllBytes(out.resolve(path));
    bytes[bytes.length / 2] ^= 1;
    Files.write(out.resolve(path), bytes);
    assertThatThrownBy(() -> FolderCheck.check(out))
        .isInstanceOfSatisfying(
            RejectedException.class,
            rejected -> assertThat(rejected.faults().get(0).where()).endsWith(path));
  }

  /** Makes summary.json tell the digests of the files as they are now. */
  private static void renewDigests(Path out) throws Exception {
    String summary = Files.readString(out.resolve("summary.json"));
    Pattern entry = Pattern.compile("(\"path\" : \"([^\"]*)\",[^}]*?\"bytes\" : )[^}]*(?=})");
    Matcher found = entry.matcher(summary);
    StringBuilder renewed = new StringBuilder();
    while (found.find()) {
      WrittenFile file = Digests.of(out, found.group(2));
      found.appendReplacement(
          renewed, found.group(1) + file.bytes() + ", \"sha256\" : \"" + file.sha256() + "\"");
    }
    Files.writeString(out.resolve("summary.json"), found.appendTail(renewed));
  }

  /** A file may be changed and its digest with it: what it says is compared too. */
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "\"RATE\":34000 | \"RATE\":99999 | records differ from plan.geojson: ",
        "\"RATE\":0, | \"RATE\":34000, | records differ from plan.geojson: ",
        "\"RATE_UNIT\":\"seeds/ac\" | \"RATE_UNIT\":\"seeds/ha\" | records differ",
        "\"RATE_UNIT\":\"seeds/ac\" | \"RATE_UNIT\":null | records differ",
        "\"AREA_AC\":0. | \"AREA_AC\":7. | records differ",
        "\"ZONE\": | \"ZOME\": | it has no column zone",
        "\"AREA_AC\": | \"ACRES\": | it has no column of areas",
      })
  void whatAPlantingFileSaysIsComparedWithThePlan(String from, String to, String what)
      throws Exception {
    Path out = folder.resolve("out");
    SampleOutput.write(cornAndSoybean().offZones(), out);
    Path corn = out.resolve("planting/corn.geojson");
    String text = Files.readString(corn);
    assertThat(text).contains(from);
    renewDigests(out);
    assertThat(FolderCheck.check(out)).isPositive();
    Files.writeString(corn, text.replace(from, to));
    renewDigests(out);
    assertThatThrownBy(() -> FolderCheck.check(out))
        .isInstanceOfSatisfying(
            RejectedException.class,
            rejected ->
                assertThat(rejected.faults())
                    .singleElement()
                    .satisfies(fault -> assertThat(fault.what()).contains(what))
                    .satisfies(fault -> assertThat(fault.where()).endsWith("corn.geojson")));
  }

  @ParameterizedTest
  @ValueSource(
      strings = {"../plan.geojson", "/etc/hosts", "a/../../b", "a\\u0000b", "", ".", "a//b"})
  void onlyFilesBelowTheFolderAreLookedAt(String path) throws Exception {
    Path out = folder.resolve("out");
    SampleOutput.write(cornAndSoybean(), out);
    Path summary = out.resolve("summary.json");
    Files.writeString(summary, Files.readString(summary).replace("\"map.svg\"", quoted(path)));
    assertThatThrownBy(() -> FolderCheck.check(out))
        .isInstanceOf(RejectedException.class)
        .hasMessageContaining("a file that cannot lie in the folder");
    assertThat(SampleOutput.placeFaults(out, true)).isNotEmpty();
  }

  private static String quoted(String path) {
    return '"' + path + '"';
  }

  @Test
  void missingAndStrangeFilesAreFoundTogether() throws Exception {
    Path out = folder.resolve("out");
    SampleOutput.write(cornAndSoybean(), out);
    Files.delete(out.resolve("planting/corn.prj"));
    Files.writeString(out.resolve("planting/notes.txt"), "mine");
    assertThatThrownBy(() -> FolderCheck.check(out))
        .isInstanceOfSatisfying(
            RejectedException.class,
            rejected ->
                assertThat(rejected.faults())
                    .extracting(fault -> fault.what())
                    .containsExactly(
                        "the file is missing", "the file does not belong to the output"));
  }

  @Test
  void aFolderThatIsNoOutputIsSaidSo() {
    assertThatThrownBy(() -> FolderCheck.check(folder))
        .isInstanceOf(RejectedException.class)
        .hasMessageContaining("not the output of a plan: there is no summary.json in it");
    assertThatThrownBy(() -> FolderCheck.check(folder.resolve("none")))
        .hasMessageContaining("there is no such folder");
  }

  @Test
  void manyStrangeFilesAreCounted() throws Exception {
    Path out = folder.resolve("out");
    SampleOutput.write(cornAndSoybean(), out);
    for (int i = 0; i < 30; i++) {
      Files.writeString(out.resolve("note" + i), "mine");
    }
    assertThatThrownBy(() -> FolderCheck.check(out))
        .isInstanceOfSatisfying(
            RejectedException.class,
            rejected -> {
              assertThat(rejected.faults()).hasSize(6);
              assertThat(rejected.faults().get(5).what())
                  .isEqualTo("25 more files do not belong to the output");
            });
  }

  @Test
  void aPackedOutputIsToBeUnpackedFirst() throws Exception {
    Path zip = Files.writeString(folder.resolve("out.zip"), "");
    assertThatThrownBy(() -> FolderCheck.check(zip))
        .isInstanceOfSatisfying(
            RejectedException.class,
            rejected -> assertThat(rejected.faults().get(0).next()).contains("unpack it first"));
  }
}
