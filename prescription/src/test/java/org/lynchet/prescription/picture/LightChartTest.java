package org.lynchet.prescription.picture;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import javax.xml.parsers.DocumentBuilderFactory;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.lynchet.prescription.light.CanopyRow;
import org.lynchet.prescription.light.CanopyTraits;
import org.lynchet.prescription.light.DayShade;
import org.lynchet.prescription.light.LightRequest;
import org.lynchet.prescription.light.LightResult;
import org.lynchet.prescription.light.Sampling;
import org.lynchet.prescription.light.SeasonLight;
import org.w3c.dom.Node;

class LightChartTest {
  private static final LocalDate DAY = LocalDate.of(2025, 8, 20);

  @TempDir Path folder;

  private static LightRequest request() {
    LocalDate planting = LocalDate.of(2025, 5, 1);
    List<CanopyRow> rows = new ArrayList<>();
    for (int i = 0; i < 8; i++) {
      boolean corn = i < 4;
      CanopyTraits canopy =
          new CanopyTraits(
              corn ? 2.2 : 0.8, 4, 0.5, planting, planting.plusDays(130), 0.4, 0.6, 0.8, 0.5, 0.7);
      String crop = corn ? "corn" : "soybean-with-a-long-name";
      rows.add(new CanopyRow(corn ? 1 : 2, crop, crop, i % 4 + 1, i * 0.762, 0.762, canopy));
    }
    return new LightRequest(-94, 44, 90, rows, Collections.nCopies(12, 0.7), Sampling.QUICK);
  }

  private static List<Scene> scenes() {
    LightResult light = SeasonLight.of(request());
    DayShade day = DayShade.of(request(), DAY);
    String name = "n".repeat(300);
    return List.of(
        LightChart.ofRows(light, "Field").scene(),
        LightChart.ofRows(light, name).scene(),
        LightChart.ofDays(List.of(day), 90, "Field").scene(),
        LightChart.ofDays(List.of(day, day, day), 90, name).scene());
  }

  @Test
  void textsStayOnThePageAndApartFromEachOther() {
    scenes().forEach(PrintedTexts::check);
  }

  /** Every row has a bar as high as its absorbed light, on one scale. */
  @Test
  void barsAreAsHighAsTheLight() {
    LightResult light = SeasonLight.of(request());
    Scene scene = LightChart.ofRows(light, "Field").scene();
    List<Double> heights =
        scene.layers().stream()
            .filter(layer -> layer.id().equals("absorbed"))
            .flatMap(layer -> layer.marks().stream())
            .map(mark -> height((Mark.Area) mark))
            .toList();
    assertThat(heights).hasSize(8);
    double points = heights.get(0) / light.rows().get(0).relativeAbsorbed();
    for (int i = 0; i < 8; i++) {
      assertThat(heights.get(i) / points)
          .isCloseTo(light.rows().get(i).relativeAbsorbed(), within(1e-9));
    }
  }

  private static double height(Mark.Area area) {
    return area.outline().parts().get(0).get(2).y - area.outline().parts().get(0).get(0).y;
  }

  /**
   * The morning's low sun from the northeast shades the row south of corn, noon's the row north.
   */
  @Test
  void shadeOfADayMovesFromSideToSide() {
    List<DayShade.Moment> moments = DayShade.of(request(), LocalDate.of(2025, 7, 1)).moments();
    DayShade.Moment early = moments.get(6);
    DayShade.Moment noon = moments.get(moments.size() / 2);
    assertThat(early.hour()).isBetween(4.5, 6.0);
    assertThat(early.beam().get(4)).isLessThan(0.2);
    assertThat(noon.beam().get(4)).isGreaterThan(0.95);
    assertThat(noon.beam().get(7)).isLessThan(0.9);
    assertThat(moments).allMatch(moment -> moment.beam().get(1) > 0.99);
  }

  @Test
  void svgIsXmlAndPngAnImage() throws Exception {
    LightChart chart = LightChart.ofDays(List.of(DayShade.of(request(), DAY)), 90, "A & <B>");
    chart.writeSvg(folder.resolve("a.svg"));
    DocumentBuilderFactory factory = DocumentBuilderFactory.newInstance();
    factory.setFeature("http://apache.org/xml/features/disallow-doctype-decl", true);
    assertThat(
            factory
                .newDocumentBuilder()
                .parse(folder.resolve("a.svg").toFile())
                .getDocumentElement())
        .extracting(Node::getNodeName)
        .isEqualTo("svg");
    chart.writePng(folder.resolve("a.png"));
    // The signature of PNG (ISO/IEC 15948, 5.2).
    assertThat(Files.readAllBytes(folder.resolve("a.png"))).startsWith(0x89, 'P', 'N', 'G');
  }
}
