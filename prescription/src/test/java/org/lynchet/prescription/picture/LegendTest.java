package org.lynchet.prescription.picture;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.lynchet.prescription.plan.PlannedStrip;
import org.lynchet.prescription.zone.FieldLayout;
import org.lynchet.prescription.zone.Zone;

class LegendTest {
  private static final double ACRE = 4046.8564224;

  @Test
  void statesTheAreasOfTheZones() throws Exception {
    FieldLayout layout = SampleLayouts.sample().layout();
    List<String> texts = DrawnSvg.of(FieldMap.of(layout)).texts("legend");
    for (Zone.Kind kind : Zone.Kind.values()) {
      double acres =
          layout.zones().stream()
                  .filter(zone -> zone.crop().equals("corn") && zone.kind() == kind)
                  .mapToDouble(Zone::areaSquareMetres)
                  .sum()
              / ACRE;
      assertThat(areaAfter(texts, "corn, " + kind.word())).isCloseTo(acres, within(0.005));
    }
    assertThat(areaAfter(texts, "whole field"))
        .isCloseTo(layout.areaSquareMetres() / ACRE, within(0.005));
  }

  @Test
  void statesProductAndRateInTheUnitOfThePlan() throws Exception {
    List<String> acres = DrawnSvg.of(FieldMap.of(SampleLayouts.sample().layout())).texts("legend");
    assertThat(acres)
        .contains(
            "tall-108 \u00b7 34,000 seeds/ac",
            "short-106 \u00b7 36,000 seeds/ac",
            "bean-2.4 \u00b7 140,000 seeds/ac");
    List<String> hectares =
        DrawnSvg.of(FieldMap.of(SampleLayouts.sample().inHectares().layout())).texts("legend");
    assertThat(hectares)
        .contains("tall-108 \u00b7 84,000 seeds/ha")
        .anyMatch(t -> t.endsWith(" ha"));
  }

  @Test
  void hasOneEntryForEachManagementZone() throws Exception {
    List<String> texts =
        DrawnSvg.of(FieldMap.of(SampleLayouts.sample().withManagementZones().layout()))
            .texts("legend");
    assertThat(texts)
        .containsSubsequence(
            "soybean, centre, heavy", "bean-2.4 \u00b7 150,000 seeds/ac",
            "soybean, centre, light", "bean-2.4 \u00b7 120,000 seeds/ac");
  }

  @Test
  void sumsUpWhatHasNoRoomAndLosesNothing() throws Exception {
    List<PlannedStrip> strips = new ArrayList<>();
    for (int i = 0; i < 14; i++) {
      strips.add(SampleLayouts.strip("crop " + "x".repeat(i), "p".repeat(40) + i, 20000, 2));
    }
    FieldLayout layout = SampleLayouts.sample().withStrips(strips).layout();
    List<String> texts = DrawnSvg.of(FieldMap.of(layout)).texts("legend");
    int entries = Entries.of(layout).list().size();
    assertThat(texts)
        .contains("and " + (entries - 17) + " more")
        .anyMatch(t -> t.contains("\u2026"));
    double sum =
        texts.subList(0, texts.indexOf("whole field")).stream()
            .filter(text -> text.endsWith(" ac"))
            .mapToDouble(LegendTest::number)
            .sum();
    assertThat(sum).isCloseTo(layout.areaSquareMetres() / ACRE, within(18 * 0.005));
  }

  @Test
  void givesEachEntryOfAManagementZoneALookOfItsOwn() {
    List<PlannedStrip> strips = new ArrayList<>();
    for (int i = 0; i < 8; i++) {
      String crop =
          List.of("corn", "soybean", "oats", "rye", "corn", "wheat", "pea", "flax").get(i);
      strips.add(SampleLayouts.strip(crop, "product-" + i, 20000 + 1000 * i, 2));
    }
    Entries entries = Entries.of(SampleLayouts.sample().withStrips(strips).layout());
    assertThat(entries.list()).hasSizeGreaterThan(15);
    assertThat(entries.list().stream().map(entries::look)).doesNotHaveDuplicates();
  }

  private static double areaAfter(List<String> texts, String first) {
    return texts.subList(texts.indexOf(first), texts.size()).stream()
        .filter(text -> text.endsWith(" ac"))
        .mapToDouble(LegendTest::number)
        .findFirst()
        .orElseThrow();
  }

  private static double number(String area) {
    return Double.parseDouble(area.replace(" ac", "").replace(",", ""));
  }
}
