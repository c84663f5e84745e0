package org.lynchet.prescription.paper;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.lynchet.prescription.zone.SamplePlans.cornAndSoybean;
import static org.lynchet.prescription.zone.SamplePlans.field;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.lynchet.prescription.quantity.AreaUnit;
import org.lynchet.prescription.quantity.SeedingRate;
import org.lynchet.prescription.summary.SeedOrder;
import org.lynchet.prescription.summary.Summary;
import org.lynchet.prescription.zone.FieldLayout;
import org.lynchet.prescription.zone.Zone;

class SeedPartTest {
  private static final String FIELD = "POLYGON ((0 0, 73.152 0, 73.152 400, 0 400, 0 0))";

  private static FieldLayout layout() throws Exception {
    return FieldLayout.of(cornAndSoybean().headland(1, true).plan(), field(FIELD));
  }

  @Test
  void partsCoverTheFieldAndAddUpToTheOrder() throws Exception {
    FieldLayout layout = layout();
    List<SeedPart> parts = SeedPart.of(layout);
    assertThat(parts.stream().mapToDouble(SeedPart::areaSquareMetres).sum())
        .isCloseTo(layout.areaSquareMetres(), within(1e-6));
    for (SeedOrder order : Summary.of(layout).seed()) {
      assertThat(
              parts.stream()
                  .filter(part -> part.product().equals(order.product()))
                  .mapToDouble(SeedPart::seeds)
                  .sum())
          .isCloseTo(order.seeds(), within(1e-6 * order.seeds()));
    }
    assertThat(parts).extracting(SeedPart::planter).containsOnly("corn-planter", "bean-planter");
    assertThat(parts)
        .filteredOn(part -> part.kind() == Zone.Kind.HEADLAND)
        .extracting(SeedPart::planter)
        .containsExactly("corn-planter");
  }

  /** 20 ac, 2 of 6 rows at 40,000 seeds/ac, units of 80,000: 266,667 seeds, 3.33 units. */
  @Test
  void partsOfUnitsAreThoseOfTheHandbookExample() {
    assertThat(SeedPart.units(20 * 2.0 / 6 * 40_000, 0, 80_000)).isEqualTo("3.3");
    assertThat(SeedPart.units(20 * 4.0 / 6 * 34_000, 0, 80_000)).isEqualTo("5.7");
    assertThat(SeedPart.units(800_000, 0.03, 80_000)).isEqualTo("10.3");
  }

  @Test
  void ratesOfOneUnitStandTogether() {
    assertThat(
            SeedPart.words(
                List.of(
                    new SeedingRate(120_000, AreaUnit.ACRE),
                    new SeedingRate(150_000, AreaUnit.ACRE),
                    new SeedingRate(8.25, AreaUnit.SQUARE_METRE))))
        .isEqualTo("120,000 / 150,000 seeds/ac; 8.25 seeds/m2");
  }
}
