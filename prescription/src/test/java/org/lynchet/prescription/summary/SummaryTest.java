package org.lynchet.prescription.summary;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.lynchet.prescription.zone.SamplePlans.cornAndSoybean;
import static org.lynchet.prescription.zone.SamplePlans.field;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.lynchet.prescription.fault.RejectedException;
import org.lynchet.prescription.fault.Warning;
import org.lynchet.prescription.plan.PlannedStrip;
import org.lynchet.prescription.plan.Product;
import org.lynchet.prescription.zone.FieldLayout;
import org.lynchet.prescription.zone.SamplePlans;

class SummaryTest {
  private static final double ACRE = 4046.8564224;

  /** Ten whole strips, 400 m long: 1,000 m2 for each 2.5 m of width. */
  private static final String TEN_STRIPS = "POLYGON ((0 0, 91.44 0, 91.44 400, 0 400, 0 0))";

  private static FieldLayout layout(SamplePlans plans) throws RejectedException {
    return FieldLayout.of(plans.plan(), field(TEN_STRIPS));
  }

  @Test
  void addsUpByCrop() throws RejectedException {
    Summary summary = Summary.of(layout(cornAndSoybean()));
    assertThat(summary.crops()).extracting(CropTotal::crop).containsExactly("corn", "soybean");
    CropTotal corn = summary.crops().get(0);
    assertThat(corn.areaSquareMetres()).isCloseTo(5 * 9.144 * 400, within(1e-3));
    assertThat(corn.strips()).isEqualTo(5);
    assertThat(corn.passes()).isEqualTo(5);
    assertThat(corn.rows()).isEqualTo(60);
    assertThat(corn.rowLengthMetres()).isCloseTo(60 * 400, within(1e-3));
    assertThat(summary.crops().get(1).rows()).isEqualTo(120);
  }

  /**
   * An acre of 30 in rows is 17,424 ft of row, of 15 in rows 34,848 ft: U. Tennessee 2011, Penn
   * State.
   */
  @Test
  void rowLengthPerAcre() throws RejectedException {
    Summary summary = Summary.of(layout(cornAndSoybean()));
    CropTotal corn = summary.crops().get(0);
    CropTotal soybean = summary.crops().get(1);
    assertThat(corn.rowLengthMetres() / 0.3048 / (corn.areaSquareMetres() / ACRE))
        .isCloseTo(17_424, within(0.1));
    assertThat(soybean.rowLengthMetres() / 0.3048 / (soybean.areaSquareMetres() / ACRE))
        .isCloseTo(34_848, within(0.2));
  }

  @Test
  void headlandCountsWithItsCrop() throws RejectedException {
    Summary summary = Summary.of(layout(cornAndSoybean().headland(1, true)));
    double headland = 91.44 * 400 - (91.44 - 2 * 9.144) * (400 - 2 * 9.144); // one pass all around
    CropTotal corn = summary.crops().get(0);
    assertThat(summary.zones().get(2).areaSquareMetres()).isCloseTo(headland, within(0.01));
    assertThat(corn.areaSquareMetres()).isGreaterThan(headland);
    double rowLength = corn.rowLengthMetres();
    assertThat(rowLength * 0.762 / corn.areaSquareMetres()).isCloseTo(1, within(1e-3));
  }

  @Test
  void ordersSeedByProduct() throws RejectedException {
    Summary summary =
        Summary.of(
            layout(cornAndSoybean().product(new Product("tall-108", "corn", 80_000, 0.95, 0.03))));
    SeedOrder border =
        summary.seed().stream()
            .filter(o -> o.product().equals("short-106"))
            .findFirst()
            .orElseThrow();
    // Nine border sides of 1.524 m x 400 m at 36,000 seeds an acre.
    double seeds = 9 * 1.524 * 400 / ACRE * 36_000;
    assertThat(border.seeds()).isCloseTo(seeds, within(1.0));
    assertThat(border.units()).isEqualTo(1);
    SeedOrder tall =
        summary.seed().stream()
            .filter(o -> o.product().equals("tall-108"))
            .findFirst()
            .orElseThrow();
    assertThat(tall.germinating()).isCloseTo(tall.seeds() * 0.95, within(1e-6));
    assertThat(tall.units()).isEqualTo((long) Math.ceil(tall.seeds() * 1.03 / 80_000));
  }

  @Test
  void cropsWithoutAUnitAreAWarning() throws RejectedException {
    PlannedStrip sorghum =
        new PlannedStrip(
            "sorghum", "bean-planter", 1, SamplePlans.seeding("sorghum-1", 80_000), null);
    Summary summary = Summary.of(layout(cornAndSoybean().strip(1, sorghum)));
    assertThat(summary.warnings())
        .extracting(Warning::code)
        .containsExactly(Warning.Code.NO_SEED_UNIT);
  }

  @Test
  void tableFitsAHundredColumns() throws RejectedException {
    String table =
        SummaryTable.of(
            Summary.of(
                layout(
                    cornAndSoybean()
                        .strip(
                            new PlannedStrip(
                                "a-crop-with-a-name-that-is-much-too-long",
                                "corn-planter",
                                1,
                                SamplePlans.seeding("a product with a very long name", 123_456.75),
                                null)))));
    assertThat(table.lines()).allMatch(line -> line.length() <= 100);
    assertThat(table).contains("ac").contains("123456.75").doesNotContain("\t");
  }

  @Test
  void jsonSaysTheSame() throws Exception {
    Summary summary = Summary.of(layout(cornAndSoybean().headland(1, true)));
    JsonNode json =
        new ObjectMapper()
            .readTree(SummaryJson.of(summary, List.of(new WrittenFile("a", 1, "00"))));
    assertThat(json.get("schemaVersion").asInt()).isEqualTo(1);
    assertThat(json.get("area_m2").asDouble()).isCloseTo(summary.areaSquareMetres(), within(1e-4));
    assertThat(json.get("zones")).hasSameSizeAs(summary.zones());
    assertThat(json.get("seed").get(0).get("units").isIntegralNumber()).isTrue();
    assertThat(json.get("files").get(0).get("path").asText()).isEqualTo("a");
  }
}
