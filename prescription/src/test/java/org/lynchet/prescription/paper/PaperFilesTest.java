package org.lynchet.prescription.paper;

import static org.assertj.core.api.Assertions.assertThat;
import static org.lynchet.prescription.zone.SamplePlans.cornAndSoybean;
import static org.lynchet.prescription.zone.SamplePlans.field;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.font.PDFont;
import org.apache.pdfbox.text.PDFTextStripper;
import org.apache.pdfbox.text.TextPosition;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.lynchet.prescription.plan.PlannedStrip;
import org.lynchet.prescription.plan.PlannedStrip.Border;
import org.lynchet.prescription.plan.PlannedStrip.Sides;
import org.lynchet.prescription.summary.Summary;
import org.lynchet.prescription.zone.FieldLayout;
import org.lynchet.prescription.zone.SamplePlans;

/** What stands on the papers, read back by PDFBox's own text extraction. */
class PaperFilesTest {
  /** 400 m long, 8 strips of 9.144 m wide. */
  private static final String FIELD = "POLYGON ((0 0, 73.152 0, 73.152 400, 0 400, 0 0))";

  @TempDir Path folder;

  private FieldLayout write(SamplePlans plans, String field) throws Exception {
    FieldLayout layout = FieldLayout.of(plans.plan(), field(field));
    PaperFiles.write(layout, Summary.of(layout), folder);
    return layout;
  }

  private List<String> pages(String file) throws IOException {
    List<String> pages = new ArrayList<>();
    try (PDDocument document = Loader.loadPDF(folder.resolve(file).toFile())) {
      for (int page = 1; page <= document.getNumberOfPages(); page++) {
        PDFTextStripper text = new PDFTextStripper();
        text.setSortByPosition(true);
        text.setSuppressDuplicateOverlappingText(true); // halos
        text.setStartPage(page);
        text.setEndPage(page);
        pages.add(text.getText(document));
      }
    }
    return pages;
  }

  @Test
  void eachPlanterHasOnePageInTheCab() throws Exception {
    write(cornAndSoybean(), FIELD);
    List<String> pages = pages(PaperFiles.CAB_SHEET);
    assertThat(pages).hasSize(2);
    // The AB line runs north through longitude -94.1, latitude 43.55; B is 500 m on: at 43.55
    // degrees a degree of latitude is 111,092 m (Snyder, USGS PP 1395, from memory), so 0.0045008.
    assertThat(pages.get(0))
        .contains("corn-planter: 12 rows of 30 in, 30 ft wide")
        .contains("A: lat 43.550000000, lon -94.100000000")
        .contains("B: lat 43.5545")
        .contains("heading 0.000\u00b0 from true north")
        .contains("it is the left edge of a strip of corn")
        .contains("+1 -3 +5 -7")
        .contains("1-2, 11-12: short-106; 3-10: tall-108")
        .contains("EXCEPT pass 1: row units 1-2 take tall-108, not short-106")
        .contains("34,000 seeds/ac")
        .contains("whole field");
    assertThat(pages.get(1)).contains("bean-planter: 24 rows of 15 in").contains("+2 -4 +6 -8");
  }

  @Test
  void centralHoppersAndWidthsOfAllMachinesAreTold() throws Exception {
    write(cornAndSoybean().sprayer(90, 10.0).combine("combine", 30), FIELD);
    assertThat(pages(PaperFiles.CAB_SHEET).get(0))
        .contains("bean-planter: 30 ft")
        .contains("sprayer: boom 90 ft")
        .contains("combine: header 30 ft");
  }

  @Test
  void unitsOfTheSeedSheetAreThoseOfTheOrder() throws Exception {
    write(cornAndSoybean().headland(1, true), FIELD);
    String text = String.join("\n", pages(PaperFiles.SEED_SHEET));
    assertThat(text).contains("FOR corn-planter", "FOR bean-planter", "border: short-106, corn");
    assertThat(text).contains("headland: tall-108, corn", "units of 80,000 seeds, reserve 0 %");
  }

  @Test
  void sameInputSameBytes() throws Exception {
    write(cornAndSoybean().headland(1, true), FIELD);
    byte[] cab = Files.readAllBytes(folder.resolve(PaperFiles.CAB_SHEET));
    byte[] seed = Files.readAllBytes(folder.resolve(PaperFiles.SEED_SHEET));
    write(cornAndSoybean().headland(1, true), FIELD);
    assertThat(folder.resolve(PaperFiles.CAB_SHEET)).hasBinaryContent(cab);
    assertThat(folder.resolve(PaperFiles.SEED_SHEET)).hasBinaryContent(seed);
    try (PDDocument document = Loader.loadPDF(cab)) {
      assertThat(document.getDocumentInformation().getCreationDate()).isNull();
      assertThat(document.getDocumentInformation().getModificationDate()).isNull();
    }
  }

  @Test
  void everyFontIsEmbedded() throws Exception {
    write(cornAndSoybean(), FIELD);
    for (String file : List.of(PaperFiles.CAB_SHEET, PaperFiles.SEED_SHEET)) {
      try (PDDocument document = Loader.loadPDF(folder.resolve(file).toFile())) {
        for (PDPage page : document.getPages()) {
          List<COSName> names = new ArrayList<>();
          page.getResources().getFontNames().forEach(names::add);
          assertThat(names).isNotEmpty();
          for (COSName name : names) {
            PDFont font = page.getResources().getFont(name);
            assertThat(font.isEmbedded()).as(file + " " + font.getName()).isTrue();
          }
        }
      }
    }
  }

  /** Long names and hundreds of passes must not push anything off the page. */
  @Test
  void allTextIsOnThePageWithItsMargins() throws Exception {
    String wide = "POLYGON ((0 0, 5000 0, 5000 300, 0 300, 0 0))";
    String longName = "W".repeat(40);
    write(
        cornAndSoybean()
            .strip(
                1,
                new PlannedStrip(
                    "soybean", "bean-planter", 1, SamplePlans.seeding(longName, 140000), null))
            .sprayer(90, 10.0),
        wide);
    for (String file : List.of(PaperFiles.CAB_SHEET, PaperFiles.SEED_SHEET)) {
      try (PDDocument document = Loader.loadPDF(folder.resolve(file).toFile())) {
        List<TextPosition> letters = new ArrayList<>();
        new PDFTextStripper() {
          @Override
          protected void processTextPosition(TextPosition letter) {
            letters.add(letter);
          }
        }.getText(document);
        assertThat(letters).isNotEmpty();
        for (TextPosition letter : letters) {
          assertThat(letter.getXDirAdj()).isGreaterThanOrEqualTo(27);
          assertThat(letter.getXDirAdj() + letter.getWidthDirAdj()).isLessThanOrEqualTo(567);
          assertThat(letter.getYDirAdj()).isBetween(28f, 765f);
        }
      }
    }
    assertThat(pages(PaperFiles.CAB_SHEET)).hasSize(2);
  }

  /** 40 passes for each planter and five management zones: nothing is left to another page. */
  @Test
  void aLargeFieldIsOnOnePageToo() throws Exception {
    List<String> names = List.of("sand", "loam", "clay", "muck", "hill");
    Map<String, Double> rates = new LinkedHashMap<>();
    List<String> zones = new ArrayList<>();
    for (int i = 0; i < names.size(); i++) {
      rates.put(names.get(i), 30100.0 + 1000 * i);
      zones.add(names.get(i));
      zones.add(
          String.format(
              "POLYGON ((-1 %1$d, 740 %1$d, 740 %2$d, -1 %2$d, -1 %1$d))",
              i * 100 - 1, i * 100 + 99));
    }
    zones.set(9, "POLYGON ((-1 399, 740 399, 740 501, -1 501, -1 399))");
    FieldLayout layout =
        FieldLayout.of(
            cornAndSoybean()
                .zones(null)
                .strip(
                    0,
                    new PlannedStrip(
                        "corn",
                        "corn-planter",
                        1,
                        SamplePlans.byZone("tall-108", rates),
                        new Border(2, Sides.BOTH, SamplePlans.seeding("short-106", 36000))))
                .sprayer(90, 10.0)
                .combine("combine", 30)
                .plan(),
            field(
                "POLYGON ((0 0, 731.52 0, 731.52 500, 0 500, 0 0))", zones.toArray(new String[0])));
    assertThat(PaperFiles.write(layout, Summary.of(layout), folder)).isEmpty();
    List<String> pages = pages(PaperFiles.CAB_SHEET);
    assertThat(pages).hasSize(2);
    for (int planter = 0; planter < 2; planter++) {
      String page = pages.get(planter).replaceAll("\\s+", " ");
      for (int pass = 1 + planter; pass <= 80; pass += 2) {
        assertThat(page).containsPattern("[+-]" + pass + " ");
      }
      assertThat(page)
          .contains("A: lat", "B: lat", "heading", "WIDTHS", "ROW UNITS", "whole field")
          .doesNotContain("more in README.txt");
    }
    String corn = pages.get(0).replaceAll("\\s+", " ");
    for (int i = 0; i < names.size(); i++) {
      assertThat(corn).contains(names.get(i) + " 3" + i + ",100 in ", names.get(i) + " 36,000 in ");
    }
  }

  /** The font has no Chinese characters; a name in them must not end the run. */
  @Test
  void lettersThatTheFontLacksBecomeQuestionMarks() throws Exception {
    write(
        cornAndSoybean()
            .strip(
                1,
                new PlannedStrip(
                    "soybean",
                    "bean-planter",
                    1,
                    SamplePlans.seeding("\u8c46-\u00e9", 140000),
                    null)),
        FIELD);
    assertThat(pages(PaperFiles.SEED_SHEET).get(0)).contains("?-\u00e9, soybean");
  }
}
