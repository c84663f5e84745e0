package org.lynchet.prescription.spraying;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.lynchet.prescription.zone.SamplePlans.cornAndSoybean;
import static org.lynchet.prescription.zone.SamplePlans.field;
import static org.lynchet.prescription.zone.SamplePlans.seeding;

import java.util.List;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.locationtech.jts.geom.Coordinate;
import org.lynchet.prescription.fault.RejectedException;
import org.lynchet.prescription.fault.Warning;
import org.lynchet.prescription.plan.PlannedStrip;
import org.lynchet.prescription.zone.DrivenPass;
import org.lynchet.prescription.zone.FieldLayout;
import org.lynchet.prescription.zone.SamplePlans;
import org.lynchet.prescription.zone.Zone;

class SprayingTest {
  private static final double FOOT = 0.3048;
  private static final double TOLERANCE = 2 * 0.0254;

  /** 300 m across, slanted at the far end, with a hole. */
  private static final String FIELD =
      "POLYGON ((0 0, 0 400, 180 430, 300 360, 300 0, 0 0), (100 100, 140 110, 120 160, 100 100))";

  private static FieldLayout layOut(SamplePlans plans) {
    try {
      return FieldLayout.of(plans.plan(), field(FIELD));
    } catch (RejectedException e) {
      throw new AssertionError(e);
    }
  }

  private static SamplePlans pattern(int cornPasses, int soybeanPasses) {
    return cornAndSoybean()
        .strip(0, new PlannedStrip("corn", "corn-planter", cornPasses, seeding("a", 34000), null))
        .strip(
            1, new PlannedStrip("soybean", "bean-planter", soybeanPasses, seeding("b", 1e5), null));
  }

  @ParameterizedTest(name = "{0} + {1} passes, boom {2} ft, sections {3} ft, headland {4}")
  @CsvSource({
    "1, 1, 90, 10, true",
    "1, 1, 90, 10, false",
    "2, 4, 90, 10, true",
    "4, 3, 60, 20, true",
    "1, 2, 90, 7, true",
    "1, 1, 90, , true",
    "3, 3, 132, 12, false",
  })
  void sprayedAreasAreTheZonesOfTheCrop(
      int corn, int soybean, double boom, @Nullable Double section, boolean headland) {
    SamplePlans plans = pattern(corn, soybean).sprayer(boom, section);
    FieldLayout layout = layOut(headland ? plans.headland(1, true) : plans);

    assertThat(layout.spraying().crops()).containsExactlyInAnyOrder("corn", "soybean");
    for (String crop : List.of("corn", "soybean")) {
      double zones =
          layout.zones().stream()
              .filter(zone -> zone.crop().equals(crop))
              .mapToDouble(Zone::areaSquareMetres)
              .sum();
      double sprayed =
          layout.spraying().areas().stream()
              .filter(area -> area.crop().equals(crop))
              .mapToDouble(SprayedArea::areaSquareMetres)
              .sum();
      assertThat(sprayed).as(crop).isCloseTo(zones, within(1e-9 * zones));
    }
    assertThat(layout.spraying().areas()).allMatch(area -> area.polygon().isValid());
    assertThat(layout.spraying().areas().stream().anyMatch(area -> area.strip() == 0))
        .isEqualTo(headland);
  }

  /** Where sections are, from the line and their numbers; where strips are, from the planting. */
  @ParameterizedTest(name = "{0} + {1} passes, boom {2} ft, sections {3} ft")
  @CsvSource({
    "1, 1, 90, 10",
    "2, 4, 90, 10",
    "4, 3, 60, 20",
    "1, 2, 90, 7",
    "1, 1, 132, 12",
    "3, 3, 100, 5"
  })
  void noOpenSectionReachesOverAnotherCrop(int corn, int soybean, double boom, double section) {
    FieldLayout layout = layOut(pattern(corn, soybean).sprayer(boom, section));

    assertThat(layout.spraying().passes()).isNotEmpty();
    for (SprayPass pass : layout.spraying().passes()) {
      double end = pass.offsetMetres() - Math.floor(boom / section) * section / 2 * FOOT;
      double left = end + (pass.firstOpen() - 1) * section * FOOT;
      double right = end + pass.lastOpen() * section * FOOT;
      double period = (corn + soybean) * 30 * FOOT;
      double stripLeft =
          Math.floor((left + 1) / period) * period
              + (pass.crop().equals("corn") ? 0 : corn * 30 * FOOT);
      double stripRight = stripLeft + (pass.crop().equals("corn") ? corn : soybean) * 30 * FOOT;
      assertThat(pass.firstOpen()).isPositive();
      assertThat(left).isGreaterThan(stripLeft - TOLERANCE / 2 - 1e-9);
      assertThat(right).isLessThan(stripRight + TOLERANCE / 2 + 1e-9);
    }
  }

  @Test
  void linesRunInTheMiddleOfTheBoom() {
    FieldLayout layout = layOut(pattern(1, 1).sprayer(90, 10.0));

    SprayPass second = layout.spraying().passes().get(1);
    assertThat(second.crop()).isEqualTo("soybean");
    assertThat(second.strip()).isEqualTo(2);
    assertThat(second.number()).isEqualTo(1);
    assertThat(second.offsetMetres()).isCloseTo(45 * FOOT, within(1e-9));
    assertThat(List.of(second.firstOpen(), second.lastOpen())).containsExactly(4, 6);
    for (Coordinate at : second.line().getCoordinates()) {
      assertThat(SamplePlans.FRAME.toOffset(at.x, at.y).x)
          .isCloseTo(45 * FOOT, within(1e-3)); // 9 decimals, and a millimetre of bow
    }
  }

  /** One planter pass, one spray pass: the same lines, found another way. */
  @Test
  void linesAreThoseOfThePlanterWhereBothTakeAStripInOnePass() {
    FieldLayout layout = layOut(pattern(1, 1).headland(1, true).sprayer(30, 10.0));

    assertThat(layout.spraying().passes().stream().map(SprayPass::line))
        .containsExactlyElementsOf(layout.passes().stream().map(DrivenPass::line).toList());
  }

  private static Stream<String> warnings(SamplePlans plans) {
    return layOut(plans).spraying().warnings().stream()
        .map(warning -> warning.code() + ": " + warning.text());
  }

  @Test
  void namesStripsThatTheBoomCannotCover() {
    assertThat(warnings(pattern(1, 2).sprayer(90, 20.0)))
        .singleElement()
        .asString()
        .startsWith(
            "SPRAY_CANNOT_COVER: sprayer in corn, strips of 30.00 ft (1, 3, 5, 7, 9, 11, 13, 15, 17, 19, 21): the"
                + " boom cannot cover them without reaching over the crop beside; the sections that are"
                + " open leave 10.00 ft of each strip");
  }

  @Test
  void opensNothingWhereASectionReachesOver() {
    FieldLayout layout = layOut(pattern(1, 1).sprayer(90, null));

    assertThat(layout.spraying().passes()).allMatch(pass -> pass.firstOpen() == 0);
    assertThat(layout.spraying().passes()).allMatch(pass -> pass.lastOpen() == 0);
    assertThat(layout.warnings())
        .filteredOn(warning -> warning.code() == Warning.Code.SPRAY_CANNOT_COVER)
        .hasSize(2)
        .allMatch(warning -> warning.text().contains("no section may be open"));
  }

  @Test
  void saysWherePassesOverlap() {
    assertThat(warnings(pattern(2, 3).sprayer(60, 25.0)))
        .anyMatch(
            text ->
                text.startsWith("SPRAY_OVERLAPS: sprayer in soybean, strips of 90.00 ft (2, 4,")
                    && text.contains("2 passes that reach over no other crop overlap by 10.00 ft"));
  }

  @Test
  void nothingIsSprayedWithoutASprayer() {
    Spraying spraying = layOut(pattern(1, 1).headland(1, true)).spraying();

    assertThat(spraying.passes()).isEmpty();
    assertThat(spraying.areas()).isEmpty();
    assertThat(spraying.warnings()).isEmpty();
  }
}
