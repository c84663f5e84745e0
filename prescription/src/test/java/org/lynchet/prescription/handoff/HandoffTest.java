package org.lynchet.prescription.handoff;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.lynchet.prescription.zone.SamplePlans.cornAndSoybean;
import static org.lynchet.prescription.zone.SamplePlans.field;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.lynchet.formats.FeatureTable;
import org.lynchet.formats.geojson.GeoJson;
import org.lynchet.formats.isoxml.TaskSet.Version;
import org.lynchet.formats.shapefile.Shapefile;
import org.lynchet.prescription.fault.Faults;
import org.lynchet.prescription.fault.RejectedException;
import org.lynchet.prescription.plan.HandoffChoices.Format;
import org.lynchet.prescription.summary.Summary;
import org.lynchet.prescription.summary.WrittenFile;
import org.lynchet.prescription.zone.FieldLayout;
import org.lynchet.prescription.zone.SamplePlans;

class HandoffTest {
  private static final String FIELD =
      "POLYGON ((0 0, 60 -10, 80 200, 10 220, 0 0), (20 40, 30 80, 40 40, 20 40))";

  @TempDir Path folder;

  private static List<WrittenFile> write(SamplePlans plans, Path target) throws Exception {
    FieldLayout layout = FieldLayout.of(plans.plan(), field(FIELD));
    return Handoff.of(layout, Summary.of(layout)).write(target, false);
  }

  @Test
  void writesEverythingOfAPlan() throws Exception {
    Path out = folder.resolve("out");
    write(cornAndSoybean().headland(1, true), out);
    assertThat(Digests.filesBelow(out))
        .containsExactly(
            "README.txt",
            "guidance/headland.geojson",
            "guidance/passes.geojson",
            "map.svg",
            "plan.geojson",
            "planting/corn.cpg",
            "planting/corn.dbf",
            "planting/corn.geojson",
            "planting/corn.prj",
            "planting/corn.shp",
            "planting/corn.shx",
            "planting/soybean.cpg",
            "planting/soybean.dbf",
            "planting/soybean.geojson",
            "planting/soybean.prj",
            "planting/soybean.shp",
            "planting/soybean.shx",
            "summary.json");
    try (Stream<Path> beside = Files.list(folder)) {
      assertThat(beside).containsExactly(out); // no draft is left
    }
    assertThat(FolderCheck.check(out)).isEqualTo(17);
  }

  @Test
  void aFieldThatIsAllHeadlandIsWrittenInEveryFormat() throws Exception {
    Path out = folder.resolve("out");
    write(cornAndSoybean().headland(9, true).formats(Format.values()), out);
    assertThat(Digests.filesBelow(out))
        .contains("planting/corn.shp", "plan.gpkg", "plan.kml", "taskdata/TASKDATA.zip")
        .doesNotContain("guidance/passes.geojson", "planting/soybean.shp");
    assertThat(out.resolve("README.txt")).content().doesNotContain("guidance/passes.geojson");
    assertThat(FolderCheck.check(out)).isPositive();
  }

  @Test
  void aFieldOfSomeSquareMetresIsChecked() throws Exception {
    // 10.0512435 m2: the four decimals of summary.json are 4.3e-6 of the field off.
    Path out = folder.resolve("out");
    FieldLayout layout =
        FieldLayout.of(
            cornAndSoybean().plan(),
            field("POLYGON ((0 0, 3.0925 0, 3.0925 3.2502, 0 3.2502, 0 0))"));
    Handoff.of(layout, Summary.of(layout)).write(out, false);
    assertThat(FolderCheck.check(out)).isPositive();
  }

  @Test
  void papersAreWrittenOnRequestAndListed() throws Exception {
    Path out = folder.resolve("out");
    FieldLayout layout =
        FieldLayout.of(cornAndSoybean().formats(Format.GEOJSON).plan().withPapers(), field(FIELD));
    List<WrittenFile> files = Handoff.of(layout, Summary.of(layout)).write(out, false);
    assertThat(files).extracting(WrittenFile::path).contains("cab-sheet.pdf", "seed-sheet.pdf");
    assertThat(out.resolve("README.txt")).content().contains("cab-sheet.pdf", "seed-sheet.pdf");
    assertThat(FolderCheck.check(out)).isEqualTo(files.size());
  }

  @Test
  void taskDataIsWrittenAndCheckedInBothVersions() throws Exception {
    for (Version version : Version.values()) {
      Path out = folder.resolve(version.name());
      write(cornAndSoybean().headland(1, true).taskData(version), out);
      assertThat(Digests.filesBelow(out))
          .contains("taskdata/TASKDATA.zip", "taskdata/TASKDATA/TASKDATA.XML")
          .noneMatch(path -> path.startsWith("planting/"));
      assertThat(FolderCheck.check(out)).isEqualTo(7);
      assertThat(out.resolve("README.txt")).content().contains("sent as 34001.69");
    }
  }

  /** 4 decimals, as in the columns of all formats, and none of the noise of binary numbers. */
  @Test
  void offsetsOfPassesAreRounded() throws Exception {
    Path out = folder.resolve("out");
    FieldLayout layout =
        FieldLayout.of(
            cornAndSoybean().headland(1, true).plan(),
            field("POLYGON ((-700 0, -200 0, -200 400, -700 400, -700 0))"));
    Handoff.of(layout, Summary.of(layout)).write(out, false);
    for (String file : List.of("passes", "headland")) {
      assertThat(out.resolve("guidance/" + file + ".geojson"))
          .content()
          .containsPattern("(offset|distance)_m\": ?-?\\d+\\.\\d")
          .doesNotContainPattern("(offset|distance)_m\": ?-?\\d+\\.\\d{5}");
    }
  }

  @Test
  void sameInputSameBytes() throws Exception {
    List<WrittenFile> once = write(cornAndSoybean().headland(1, true), folder.resolve("once"));
    List<WrittenFile> again = write(cornAndSoybean().headland(1, true), folder.resolve("again"));
    assertThat(once).isEqualTo(again);
    assertThat(folder.resolve("once/summary.json"))
        .hasSameBinaryContentAs(folder.resolve("again/summary.json"));
  }

  @Test
  void eachCropHasItsOwnZonesOnly() throws Exception {
    write(cornAndSoybean(), folder.resolve("out"));
    FeatureTable corn = Shapefile.reader().read(folder.resolve("out/planting/corn.shp"));
    assertThat(corn.features()).isNotEmpty();
    assertThat(corn.features()).allMatch(feature -> "corn".equals(feature.values().get(0)));
    assertThat(corn.columns().get(6).name()).isEqualTo("AREA_AC");
  }

  @Test
  void aSprayerAddsItsFilesForEachCrop() throws Exception {
    Path out = folder.resolve("out");
    write(cornAndSoybean().headland(1, true).sprayer(90, 10.0), out);
    assertThat(Digests.filesBelow(out))
        .contains("spraying/corn.shp", "spraying/corn.geojson", "spraying/soybean.dbf")
        .contains("spraying/lines/corn.shp", "spraying/lines/soybean.geojson")
        .hasSize(18 + 24);
    assertThat(FolderCheck.check(out)).isEqualTo(17 + 24);
    FeatureTable lines = Shapefile.reader().read(out.resolve("spraying/lines/soybean.shp"));
    assertThat(lines.features().get(0).values())
        .containsExactly("soybean", 1.0, 1.0, 4.0, 6.0, 13.716);
    assertThat(out.resolve("README.txt"))
        .content()
        .contains("  soybean: sprayer, ")
        .contains("sections 4 to 6 open")
        .contains("headland (strip 0, pass 0) has no lines")
        .contains("The label is the law")
        .contains("Both crops must tolerate");
  }

  @Test
  void offZonesShutTheRowsOverTheOtherCrop() throws Exception {
    write(cornAndSoybean().offZones(), folder.resolve("out"));
    FeatureTable plan = GeoJson.reader().read(folder.resolve("out/plan.geojson"));
    FeatureTable corn = Shapefile.reader().read(folder.resolve("out/planting/corn.shp"));
    assertThat(corn.features()).hasSameSizeAs(plan.features());
    assertThat(corn.features())
        .filteredOn(feature -> "soybean".equals(feature.values().get(0)))
        .isNotEmpty()
        .allMatch(feature -> feature.values().get(4).equals(0.0))
        .allMatch(feature -> "off".equals(feature.values().get(2)));
    assertThat(FolderCheck.check(folder.resolve("out"))).isPositive();
  }

  @Test
  void waterwaysAreInThePlanAndOffInPlantingFiles() throws Exception {
    String way = "POLYGON ((-5 100, 300 100, 300 104, -5 104, -5 100))";
    FieldLayout layout =
        FieldLayout.of(
            cornAndSoybean().headland(1, true).offZones().plan(),
            SamplePlans.fieldWithWaterways(FIELD, way));
    Path out = folder.resolve("out");
    Handoff.of(layout, Summary.of(layout)).write(out, false);
    FeatureTable plan = GeoJson.reader().read(out.resolve("plan.geojson"));
    assertThat(plan.features())
        .filteredOn(feature -> "waterway".equals(feature.values().get(2)))
        .singleElement()
        .satisfies(
            feature -> {
              assertThat(feature.values().subList(0, 5))
                  .containsExactly("none", 0.0, "waterway", "none", 0.0);
              assertThat(feature.values().get(6))
                  .isEqualTo(layout.waterways().get(0).areaSquareMetres());
            });
    FeatureTable corn = Shapefile.reader().read(out.resolve("planting/corn.shp"));
    assertThat(corn.features())
        .filteredOn(feature -> "none".equals(feature.values().get(0)))
        .singleElement()
        .satisfies(
            feature ->
                assertThat(feature.values().subList(2, 5)).containsExactly("off", "none", 0.0));
    assertThat(FolderCheck.check(out)).isPositive();
    assertThat(Files.readString(out.resolve("summary.json"))).contains("\"waterways_m2\" : ");
    assertThat(Files.readString(out.resolve("README.txt")))
        .contains("Waterways, driven across but not planted: ", "guidance/headland.geojson");
    assertThat(Files.readString(out.resolve("map.svg"))).contains("waterway, not planted");
  }

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
    write(cornAndSoybean(), out);
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
    write(cornAndSoybean().offZones(), out);
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
    write(cornAndSoybean(), out);
    Path summary = out.resolve("summary.json");
    Files.writeString(summary, Files.readString(summary).replace("\"map.svg\"", quoted(path)));
    assertThatThrownBy(() -> FolderCheck.check(out))
        .isInstanceOf(RejectedException.class)
        .hasMessageContaining("a file that cannot lie in the folder");
    assertThat(place(out, true)).isNotEmpty();
  }

  private static String quoted(String path) {
    return '"' + path + '"';
  }

  @Test
  void missingAndStrangeFilesAreFoundTogether() throws Exception {
    Path out = folder.resolve("out");
    write(cornAndSoybean(), out);
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
    write(cornAndSoybean(), out);
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

  @Test
  void replacesAnEarlierOutputOnlyWhenForced() throws Exception {
    Path out = folder.resolve("out");
    write(cornAndSoybean(), out);
    assertThat(place(out, false)).singleElement().asString().contains("there already");
    assertThat(place(out, true)).isEmpty();
    write(cornAndSoybean().offZones(), out);
    assertThat(FolderCheck.check(out)).isPositive();
    try (Stream<Path> beside = Files.list(folder)) {
      assertThat(beside).containsExactly(out);
    }
  }

  @Test
  void neverReplacesFilesOfTheUsers() throws Exception {
    Path out = folder.resolve("out");
    write(cornAndSoybean(), out);
    Files.writeString(out.resolve("notes.txt"), "mine");
    assertThat(place(out, true)).singleElement().asString().contains("notes.txt");
    assertThat(place(folder, true)).isNotEmpty();
  }

  @Test
  void aFileInThePlaceIsAFault() throws IOException {
    Path file = Files.writeString(folder.resolve("taken"), "mine");
    assertThat(place(file, true)).singleElement().asString().contains("is a file");
  }

  @Test
  void anUnwritablePlaceIsAFaultAndLeavesNothing() throws Exception {
    Path file = Files.writeString(folder.resolve("taken"), "mine");
    assertThatThrownBy(() -> write(cornAndSoybean(), file.resolve("out")))
        .isInstanceOf(RejectedException.class)
        .hasMessageContaining("cannot write");
    try (Stream<Path> beside = Files.list(folder)) {
      assertThat(beside).containsExactly(file);
    }
  }

  private static List<String> place(Path target, boolean force) {
    Faults faults = new Faults();
    Handoff.checkPlace(target, force, faults);
    return faults.list().stream().map(fault -> fault.what()).toList();
  }
}
