package org.lynchet.prescription.handoff;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.lynchet.prescription.zone.SamplePlans.cornAndSoybean;
import static org.lynchet.prescription.zone.SamplePlans.field;
import static org.lynchet.prescription.zone.SamplePlans.lonLat;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import java.util.zip.ZipEntry;
import java.util.zip.ZipFile;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.lynchet.formats.FeatureTable;
import org.lynchet.formats.geojson.GeoJson;
import org.lynchet.formats.shapefile.Shapefile;
import org.lynchet.prescription.fault.Faults;
import org.lynchet.prescription.fault.RejectedException;
import org.lynchet.prescription.plan.PlannedSetback;
import org.lynchet.prescription.plan.PlannedSetback.Side;
import org.lynchet.prescription.quantity.AreaUnit;
import org.lynchet.prescription.quantity.Length;
import org.lynchet.prescription.quantity.LengthUnit;
import org.lynchet.prescription.setback.Neighbour;
import org.lynchet.prescription.setback.SprayPlan;
import org.lynchet.prescription.summary.WrittenFile;
import org.lynchet.prescription.zone.FieldLayout;

class ApplicatorFolderTest {
  private static final String FIELD = "POLYGON ((0 0, 73.152 0, 80 400, 0 400, 0 0))";

  @TempDir Path folder;

  private static ApplicatorFolder sample() throws Exception {
    Length creek = new Length(50, LengthUnit.FOOT);
    FieldLayout layout =
        FieldLayout.of(
            cornAndSoybean()
                .headland(1, true)
                .sprayer(90, 10.0)
                .setback(
                    new PlannedSetback(
                        Map.of(Side.SOUTH, new Length(30, LengthUnit.FOOT)),
                        Map.of("creek", new PlannedSetback.Neighbour("creek.shp", creek))))
                .plan(),
            field(FIELD));
    Neighbour neighbour =
        new Neighbour("creek", lonLat("LINESTRING (-5 0, -10 400)"), creek.metres());
    return new ApplicatorFolder(layout, SprayPlan.of(layout, List.of(neighbour)), AreaUnit.ACRE);
  }

  @Test
  void aFolderHoldsWhatTheApplicatorNeeds() throws Exception {
    Path out = folder.resolve("spray");
    List<WrittenFile> files = sample().write(out);
    assertThat(files)
        .extracting(WrittenFile::path)
        .containsExactlyElementsOf(Digests.filesBelow(out));
    assertThat(Digests.filesBelow(out))
        .contains(
            "README.txt",
            "set-aside.geojson",
            "spray-map.pdf",
            "spray-record.pdf",
            "spraying/corn.geojson",
            "spraying/corn.shp",
            "spraying/lines/corn.shp",
            "spraying/soybean.geojson",
            "summary.json")
        .noneMatch(path -> path.startsWith("planting") || path.startsWith("plan"));
    try (Stream<Path> beside = Files.list(folder)) {
      assertThat(beside).containsExactly(out); // no draft is left
    }
    assertThat(FolderCheck.check(out)).isEqualTo(files.size() - 1);
    Files.writeString(out.resolve("README.txt"), "other");
    assertThatThrownBy(() -> FolderCheck.check(out)).isInstanceOf(RejectedException.class);
  }

  @Test
  void aZipHoldsTheSameAndNothingIsLeftBeside() throws Exception {
    Path out = folder.resolve("spray");
    sample().write(out);
    Path zip = folder.resolve("Spray.ZIP");
    List<WrittenFile> files = sample().write(zip);
    List<String> names = new ArrayList<>();
    try (ZipFile read = new ZipFile(zip.toFile())) {
      for (ZipEntry entry : Collections.list(read.entries())) {
        names.add(entry.getName());
        try (InputStream content = read.getInputStream(entry)) {
          assertThat(out.resolve(entry.getName())).hasBinaryContent(content.readAllBytes());
        }
      }
    }
    assertThat(names).isEqualTo(Digests.filesBelow(out)).hasSameSizeAs(files);
    byte[] first = Files.readAllBytes(zip);
    sample().write(zip); // replaces it
    assertThat(zip).hasBinaryContent(first);
    try (Stream<Path> beside = Files.list(folder)) {
      assertThat(beside).containsExactlyInAnyOrder(out, zip);
    }
  }

  @Test
  void areasOfTheFilesAreThoseOfTheText() throws Exception {
    Path out = folder.resolve("spray");
    sample().write(out);
    double acres = 0;
    for (String crop : List.of("corn", "soybean")) {
      FeatureTable shp = Shapefile.reader().read(out.resolve("spraying/" + crop + ".shp"));
      FeatureTable json = GeoJson.reader().read(out.resolve("spraying/" + crop + ".geojson"));
      int column = shp.findColumn("AREA_AC").orElseThrow();
      double ofCrop = 0;
      for (int i = 0; i < shp.features().size(); i++) {
        assertThat(shp.features().get(i).values()).isEqualTo(json.features().get(i).values());
        ofCrop += (Double) shp.features().get(i).values().get(column);
      }
      assertThat(out.resolve("README.txt"))
          .content()
          .containsPattern(String.format("%s +%.2f ", crop, ofCrop));
      acres += ofCrop;
    }
    FeatureTable aside = GeoJson.reader().read(out.resolve("set-aside.geojson"));
    double asideAcres =
        aside.features().stream()
                .mapToDouble(
                    f -> (Double) f.values().get(aside.findColumn("area_m2").orElseThrow()))
                .sum()
            / 4046.8564224; // international acre
    // A trapezium: (73.152 + 80) / 2 x 400 m.
    assertThat(acres + asideAcres).isCloseTo(153.152 / 2 * 400 / 4046.8564224, within(0.002));
  }

  /** No product and no rate, but what has to be known. */
  @Test
  void recommendsNothingAndSaysWhatHolds() throws Exception {
    Path out = folder.resolve("spray");
    sample().write(out);
    String readme = Files.readString(out.resolve("README.txt")).replaceAll("\\s+", " ");
    assertThat(readme)
        .contains("The label is the law")
        .contains("certified applicator")
        .contains("40 CFR 170.405): 100 ft all around for spraying from the air")
        .contains("25 ft all around for medium or larger droplets from more than 12 in")
        .contains("none otherwise")
        .contains("inversion")
        .contains("Both crops must tolerate")
        .contains("State and local rules");
    assertThat(Files.readString(out.resolve("README.txt")).lines())
        .allMatch(line -> line.length() <= 100);
    for (String text : List.of(readme, text(out.resolve("spray-map.pdf")))) {
      assertThat(text).doesNotContain("seeds", "tall-108", "bean-2.4");
    }
  }

  @Test
  void mapAndRecordsAreOnePageEach() throws Exception {
    Path out = folder.resolve("spray");
    sample().write(out);
    assertThat(pages(out.resolve("spray-map.pdf"))).isEqualTo(1);
    assertThat(pages(out.resolve("spray-record.pdf"))).isEqualTo(2);
    assertThat(text(out.resolve("spray-map.pdf")))
        .contains("corn, headland", "set aside, not sprayed", "sides: south 30 ft")
        .contains("neighbour: creek", "set back 50 ft", "sprayed in all", "numbers: strips")
        .contains("sections 4 to 6 open");
    assertThat(text(out.resolve("spray-record.pdf")))
        .contains(
            "EPA registration number",
            "Licence number",
            "Wind speed",
            "record of spraying soybean");
  }

  private static int pages(Path pdf) throws IOException {
    try (PDDocument document = Loader.loadPDF(pdf.toFile())) {
      return document.getNumberOfPages();
    }
  }

  private static String text(Path pdf) throws IOException {
    try (PDDocument document = Loader.loadPDF(pdf.toFile())) {
      return new PDFTextStripper().getText(document);
    }
  }

  @Test
  void whatIsThereIsNotReplacedWithoutForce() throws Exception {
    Path zip = Files.writeString(folder.resolve("there.zip"), "mine");
    Path named = Files.createDirectory(folder.resolve("folder.zip"));
    assertThat(faults(zip, false)).hasSize(1).first().asString().contains("--force");
    assertThat(faults(zip, true)).isEmpty();
    assertThat(faults(named, true)).hasSize(1);
    Path out = folder.resolve("spray");
    sample().write(out);
    assertThat(faults(out, false)).hasSize(1);
    assertThat(faults(out, true)).isEmpty();
    Files.writeString(out.resolve("note.txt"), "mine");
    assertThat(faults(out, true)).hasSize(1).first().asString().contains("note.txt");
  }

  private static List<?> faults(Path target, boolean force) {
    Faults faults = new Faults();
    ApplicatorFolder.checkPlace(target, force, faults);
    return faults.list();
  }
}
