package org.lynchet.prescription.handoff;

import static org.assertj.core.api.Assertions.assertThat;
import static org.lynchet.prescription.zone.SamplePlans.cornAndSoybean;
import static org.lynchet.prescription.zone.SamplePlans.field;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.lynchet.formats.FeatureTable;
import org.lynchet.formats.geojson.GeoJson;
import org.lynchet.formats.isoxml.TaskSet.Version;
import org.lynchet.formats.shapefile.Shapefile;
import org.lynchet.prescription.plan.HandoffChoices.Format;
import org.lynchet.prescription.summary.Summary;
import org.lynchet.prescription.summary.WrittenFile;
import org.lynchet.prescription.zone.FieldLayout;
import org.lynchet.prescription.zone.SamplePlans;

/** What is written of a plan. */
class HandoffTest {
  @TempDir Path folder;

  @Test
  void writesEverythingOfAPlan() throws Exception {
    Path out = folder.resolve("out");
    SampleOutput.write(cornAndSoybean().headland(1, true), out);
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
    SampleOutput.write(cornAndSoybean().headland(9, true).formats(Format.values()), out);
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
        FieldLayout.of(
            cornAndSoybean().formats(Format.GEOJSON).plan().withPapers(),
            field(SampleOutput.FIELD));
    List<WrittenFile> files = Handoff.of(layout, Summary.of(layout)).write(out, false);
    assertThat(files).extracting(WrittenFile::path).contains("cab-sheet.pdf", "seed-sheet.pdf");
    assertThat(out.resolve("README.txt")).content().contains("cab-sheet.pdf", "seed-sheet.pdf");
    assertThat(FolderCheck.check(out)).isEqualTo(files.size());
  }

  @Test
  void taskDataIsWrittenAndCheckedInBothVersions() throws Exception {
    for (Version version : Version.values()) {
      Path out = folder.resolve(version.name());
      SampleOutput.write(cornAndSoybean().headland(1, true).taskData(version), out);
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
    List<WrittenFile> once =
        SampleOutput.write(cornAndSoybean().headland(1, true), folder.resolve("once"));
    List<WrittenFile> again =
        SampleOutput.write(cornAndSoybean().headland(1, true), folder.resolve("again"));
    assertThat(once).isEqualTo(again);
    assertThat(folder.resolve("once/summary.json"))
        .hasSameBinaryContentAs(folder.resolve("again/summary.json"));
  }

  @Test
  void eachCropHasItsOwnZonesOnly() throws Exception {
    SampleOutput.write(cornAndSoybean(), folder.resolve("out"));
    FeatureTable corn = Shapefile.reader().read(folder.resolve("out/planting/corn.shp"));
    assertThat(corn.features()).isNotEmpty();
    assertThat(corn.features()).allMatch(feature -> "corn".equals(feature.values().get(0)));
    assertThat(corn.columns().get(6).name()).isEqualTo("AREA_AC");
  }

  @Test
  void aSprayerAddsItsFilesForEachCrop() throws Exception {
    Path out = folder.resolve("out");
    SampleOutput.write(cornAndSoybean().headland(1, true).sprayer(90, 10.0), out);
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
    SampleOutput.write(cornAndSoybean().offZones(), folder.resolve("out"));
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
            SamplePlans.fieldWithWaterways(SampleOutput.FIELD, way));
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
}
