package org.lynchet.integration.endtoend;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.lynchet.integration.program.Child;
import org.lynchet.integration.program.Program;
import org.lynchet.integration.program.Run;
import org.lynchet.integration.program.Tools;

/** The example's papers as poppler reads and draws them, which shares no code with the writer. */
class PapersIT {
  /** Letter and A4 printers reach this near to the edge of the sheet: a quarter of an inch. */
  private static final int MARGIN_POINTS = 18;

  private static final int DOTS_PER_INCH = 72;

  @TempDir static Path folder;

  @BeforeAll
  static void writeTheExample() throws IOException, InterruptedException {
    Example example = Example.copyInto(folder);
    Path plan = example.plan();
    Files.writeString(
        example.folder().resolve("creek.geojson"),
        "{\"type\": \"LineString\", \"coordinates\": [[-94.1035, 43.5562], [-94.09, 43.5562]]}");
    Files.writeString(
        plan,
        Files.readString(plan)
                .replace("handoff:", "handoff:\n  papers: true")
                .replace(
                    "  management-zones:", "  entrance: [-94.1022, 43.5512]\n  management-zones:")
            + "\nsetback: {sides: {west: 60 ft}, neighbours: {creek: {file: creek.geojson,"
            + " distance: 100 ft}}}\n");
    lynchet("plan", plan.toString(), "--out", "out");
    lynchet("handoff", plan.toString(), "--to", "applicator", "--out", "spray");
    lynchet("handoff", plan.toString(), "--to", "applicator", "--out", "spray.zip");
    lynchet("check", "out");
    lynchet("check", "spray");
  }

  private static void lynchet(String... arguments) throws IOException, InterruptedException {
    Run run = Program.jar().run(folder, arguments);
    assertThat(run.exitCode()).as(run.toString()).isZero();
  }

  private static String poppler(String... command) throws IOException, InterruptedException {
    Tools.assumeInstalled(command[0]);
    Run run = Child.of(folder, command).run();
    assertThat(run.exitCode()).as(run.toString()).isZero();
    return run.out();
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "out/cab-sheet.pdf",
        "out/seed-sheet.pdf",
        "spray/spray-map.pdf",
        "spray/spray-record.pdf"
      })
  void fontsAreEmbeddedAndTextCanBeSelected(String pdf) throws Exception {
    List<String> fonts = poppler("pdffonts", pdf).lines().skip(2).toList();
    assertThat(fonts).isNotEmpty();
    // The columns emb, sub and uni: embedded, of letters used, with a way back to Unicode.
    assertThat(fonts).allMatch(line -> line.matches(".*LiberationSans.* yes yes yes .*"));
    assertThat(poppler("pdftotext", pdf, "-")).contains("Sandhill East");
  }

  @Test
  void theCabSheetHasAPageForEachPlanterThatSaysWhatTheDriverNeeds() throws Exception {
    String corn = poppler("pdftotext", "-layout", "-l", "1", "out/cab-sheet.pdf", "-");
    assertThat(corn)
        .contains("corn-planter: 12 rows of 30 in, 30 ft wide")
        .contains("A: lat 43.551200000, lon -94.102100000")
        .contains("B: lat 43.551200000, lon -94.093300000")
        .contains("+1 -3 +5 -7")
        .contains("1-2, 11-12: short-106; 3-10: tall-108")
        .contains("36,000 seeds/ac");
    assertThat(poppler("pdfinfo", "out/cab-sheet.pdf")).containsPattern("Pages: +2\n");
    assertThat(poppler("pdftotext", "-f", "2", "out/cab-sheet.pdf", "-"))
        .contains("bean-planter: 24 rows of 15 in");
  }

  /** Feet, inches and miles stand in parentheses only, where a rule of the law has them. */
  @Test
  void aMetricPlanHasMetricPapers() throws Exception {
    Path metric =
        Folders.copy(Program.examples().resolve("metric-shapefile"), folder.resolve("metric"));
    String plan = metric.resolve("plan.yaml").toString();
    lynchet("plan", plan, "--papers", "--out", "metric-out");
    lynchet("handoff", plan, "--to", "applicator", "--out", "metric-spray");
    List<String> texts = new ArrayList<>();
    texts.add(Files.readString(folder.resolve("metric-spray/README.txt")));
    for (String pdf :
        List.of(
            "metric-out/cab-sheet.pdf",
            "metric-out/seed-sheet.pdf",
            "metric-spray/spray-map.pdf",
            "metric-spray/spray-record.pdf")) {
      texts.add(poppler("pdftotext", "-layout", pdf, "-"));
    }
    for (String text : texts) {
      assertThat(text.replaceAll("\\([^)]*\\)", ""))
          .doesNotContainPattern("\\b(ac|acres?|ft|feet|inch|mph|mi)\\b")
          .doesNotContainPattern("\\d in\\b");
    }
    assertThat(texts.get(4)).contains("Rate of product per hectare", "Carrier per hectare", " ha.");
    assertThat(poppler("pdftotext", "-layout", "spray/spray-record.pdf", "-"))
        .contains("Rate of product per acre", "Carrier per acre");
  }

  @Test
  void theSprayMapIsOnePage() throws Exception {
    assertThat(poppler("pdfinfo", "spray/spray-map.pdf")).containsPattern("Pages: +1\n");
    assertThat(poppler("pdftotext", "-layout", "spray/spray-map.pdf", "-"))
        .contains("set aside, not sprayed", "neighbour: creek", "sections 4 to 6 open")
        .contains("entrance: lat 43.551200000, lon -94.102200000");
  }

  /** Drawn at one dot to the point, nothing but white lies in the margins: no text is cut. */
  @ParameterizedTest
  @ValueSource(
      strings = {
        "out/cab-sheet.pdf",
        "out/seed-sheet.pdf",
        "spray/spray-map.pdf",
        "spray/spray-record.pdf"
      })
  void nothingReachesIntoTheMargins(String pdf) throws Exception {
    Path pictures = Files.createTempDirectory(folder, "drawn");
    String prefix = pictures.resolve("page").toString();
    poppler("pdftoppm", "-r", Integer.toString(DOTS_PER_INCH), "-png", pdf, prefix);
    List<Path> pages;
    try (Stream<Path> drawn = Files.list(pictures)) {
      pages = drawn.sorted().toList();
    }
    assertThat(pages).isNotEmpty();
    for (Path page : pages) {
      BufferedImage image = ImageIO.read(page.toFile());
      assertThat(image.getWidth()).isEqualTo(594);
      assertThat(image.getHeight()).isEqualTo(792);
      int inked = 0;
      for (int y = 0; y < image.getHeight(); y++) {
        for (int x = 0; x < image.getWidth(); x++) {
          boolean white = (image.getRGB(x, y) & 0xFFFFFF) == 0xFFFFFF;
          boolean inside =
              Math.min(x, image.getWidth() - 1 - x) >= MARGIN_POINTS
                  && Math.min(y, image.getHeight() - 1 - y) >= MARGIN_POINTS;
          assertThat(white || inside).as(page + " at " + x + ", " + y).isTrue();
          inked += white ? 0 : 1;
        }
      }
      assertThat(inked).isGreaterThan(5000);
    }
  }

  @Test
  void theZipHoldsTheFolder() throws Exception {
    Tools.assumeInstalled("unzip");
    Run run = Child.of(folder, "unzip", "-q", "spray.zip", "-d", "unpacked").run();
    assertThat(run.exitCode()).as(run.toString()).isZero();
    try (Stream<Path> files = Files.walk(folder.resolve("spray"))) {
      for (Path file : files.filter(Files::isRegularFile).toList()) {
        Path twin = folder.resolve("unpacked").resolve(folder.resolve("spray").relativize(file));
        assertThat(twin).hasSameBinaryContentAs(file);
      }
    }
  }
}
