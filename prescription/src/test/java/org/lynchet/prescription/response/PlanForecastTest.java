package org.lynchet.prescription.response;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.lynchet.formats.Fault;
import org.lynchet.prescription.fault.RejectedException;
import org.lynchet.prescription.light.LightCsv;
import org.lynchet.prescription.light.LightJson;
import org.lynchet.prescription.plan.Plan;
import org.lynchet.prescription.plan.PlanFile;
import org.lynchet.prescription.plan.PlannedStrip;
import org.lynchet.prescription.plan.PlannedStrip.Border;
import org.lynchet.prescription.quantity.Spread;
import org.lynchet.prescription.response.BorderAdvice.Choice;
import org.lynchet.prescription.response.BorderAdvice.Proposal;
import org.lynchet.prescription.response.BorderAdvice.Side;

class PlanForecastTest {
  private static final String PLAN =
      """
      field: {name: Field, boundary: field.geojson}
      guidance: {ab-line: {through: [-94.1, 43.55], heading: 90}}
      machines: {planter: {kind: planter, rows: 8, row-spacing: 30 in}}
      products: {"Short, 106": {crop: corn}}
      strips:
        - crop: corn
          planted-by: planter
          passes: 1
          centre: {product: tall-108, rate: 34000 seeds/ac}
        - crop: soybean
          planted-by: planter
          passes: 1
          centre: {product: bean-2.4, rate: 140000 seeds/ac}
      """;

  @TempDir Path folder;

  private PlanForecast forecast(String text) throws IOException, RejectedException {
    return PlanForecast.of(read(text));
  }

  private Plan read(String text) throws IOException, RejectedException {
    return PlanFile.read(Files.writeString(folder.resolve("plan.yaml"), text));
  }

  @Test
  void sidesOfEastWestRowsDiffer() throws Exception {
    BorderAdvice advice = forecast(PLAN).borderAdvice().get(0);
    assertThat(advice.strip()).isEqualTo(1);
    assertThat(advice.shortHeightMetres()).isEqualTo(1.70);
    assertThat(advice.sides()).extracting(Side::facing).containsExactly("north", "south");
    for (Side side : advice.sides()) {
      assertThat(side.choices()).extracting(Choice::rows).containsExactly(0, 1, 2, 3, 4);
      for (int rows = 1; rows <= 4; rows++) {
        Choice more = side.choices().get(rows);
        Choice fewer = side.choices().get(rows - 1);
        // Each lower row gives light to the short crop and takes some from the tall one.
        assertThat(more.shortLight()).isGreaterThan(fewer.shortLight() - 2e-4);
        assertThat(more.tallYield()).isLessThan(fewer.tallYield() + 2e-4);
      }
    }
    assertThat(advice.sides().get(0).choices().get(2).shortLight())
        .isNotCloseTo(advice.sides().get(1).choices().get(2).shortLight(), within(1e-3));
  }

  @Test
  void sidesOfNorthSouthRowsAreAlike() throws Exception {
    List<Side> sides =
        forecast(PLAN.replace("heading: 90", "heading: 0")).borderAdvice().get(0).sides();
    assertThat(sides).extracting(Side::facing).containsExactly("west", "east");
    for (int rows = 0; rows <= 4; rows++) {
      assertThat(sides.get(0).choices().get(rows).shortLight())
          .isCloseTo(sides.get(1).choices().get(rows).shortLight(), within(2e-3));
    }
  }

  /** The block in the text is pasted into the plan, which is read again. */
  @Test
  void theProposedBlockCanBePasted() throws Exception {
    PlanForecast forecast = forecast(PLAN.replace("heading: 90", "heading: 0"));
    Proposal proposal = Objects.requireNonNull(forecast.borderAdvice().get(0).proposal());
    String block =
        forecast
            .table()
            .lines()
            .filter(line -> line.contains("border: {"))
            .findFirst()
            .orElseThrow();
    Plan pasted =
        read(PLAN.replace("rate: 34000 seeds/ac}\n", "rate: 34000 seeds/ac}\n" + block + "\n"));
    PlannedStrip strip = pasted.strips().get(0);
    Border border = Objects.requireNonNull(strip.border());
    assertThat(border.rows()).isEqualTo(proposal.rows());
    assertThat(border.sides().name().toLowerCase(Locale.ROOT)).isEqualTo(proposal.sides());
    assertThat(border.seeding().product()).isEqualTo("Short, 106");
    assertThat(border.seeding().everywhere()).isEqualTo(strip.centre().everywhere());
  }

  @Test
  void cautionsAndTheDrySeasonWarningAlwaysPrint() throws Exception {
    for (String season : List.of("dry", "normal", "wet")) {
      String table = forecast(PLAN + "forecast: {season: " + season + "}\n").table();
      assertThat(table)
          .contains("Dry-season warning", "not a promise", "Land equivalent ratio", "near 1")
          .contains("licensed professional")
          .contains("of up to 4, that bring 80 % of the largest gain", "below 0.001 of the land");
      assertThat(table.lines()).allMatch(line -> line.length() <= 100);
    }
  }

  @Test
  void aDrySeasonLowersTheForecast() throws Exception {
    Spread dry = forecast(PLAN + "forecast: {season: dry}\n").yields().landEquivalentRatio();
    Spread normal = forecast(PLAN).yields().landEquivalentRatio();
    assertThat(dry.low()).isLessThan(normal.low());
    assertThat(dry.typical()).isLessThan(normal.typical());
    assertThat(dry.high()).isEqualTo(normal.high());
  }

  @Test
  void theFarmsOwnNumbersReplaceTheDefaults() throws Exception {
    String own = "forecast: {response: {soybean: {low: 0, typical: 0, high: 0}}}\n";
    assertThat(forecast(PLAN + own).yields().crop("soybean").relativeYield())
        .isEqualTo(new Spread(1, 1, 1));
  }

  /**
   * In the north the sun stands in the south: AB line on 90 degrees, so the right side is south.
   */
  @Test
  void outermostRowsAtOpenSidesGetMoreThanInBlocks() throws Exception {
    PlanForecast forecast = forecast(PLAN);
    assertThat(forecast.sides())
        .extracting(side -> side.light().row().crop() + (side.left() ? " left" : " right"))
        .containsExactly("corn left", "corn right", "soybean left", "soybean right");
    assertThat(forecast.sides())
        .allSatisfy(side -> assertThat(side.light().relativeAbsorbed()).isGreaterThan(1.05));
    assertThat(forecast.sides().get(1).light().relativeAbsorbed())
        .isGreaterThan(forecast.sides().get(0).light().relativeAbsorbed() + 0.05);
    assertThat(forecast.table()).contains("open side of the field");
  }

  @Test
  void jsonHasTheShapeAskedFor() throws Exception {
    JsonNode json = new ObjectMapper().readTree(LightJson.of(forecast(PLAN).light()));
    assertThat(json.fieldNames()).toIterable().containsExactly("schemaVersion", "rows");
    assertThat(json.path("schemaVersion").asInt()).isEqualTo(1);
    assertThat(json.path("rows")).hasSize(16);
    JsonNode last = json.path("rows").path(15);
    assertThat(last.fieldNames())
        .toIterable()
        .containsExactly(
            "strip", "crop", "row", "offset_m", "relative_incident", "relative_absorbed");
    assertThat(last.path("strip").asInt()).isEqualTo(2);
    assertThat(last.path("offset_m").asDouble()).isCloseTo(-4 * 0.762 + 15.5 * 0.762, within(1e-4));
  }

  @Test
  void csvHasARowForEachRow() throws Exception {
    List<String> lines = LightCsv.of(forecast(PLAN).light()).lines().toList();
    assertThat(lines).hasSize(17);
    assertThat(lines.get(0))
        .startsWith("strip,crop,product,row,offset_m,relative_incident,relative_absorbed,")
        .contains("incident_05,absorbed_05", "incident_09,absorbed_09", "shade_12");
    int columns = lines.get(0).split(",", -1).length;
    assertThat(lines).allMatch(line -> line.split(",", -1).length == columns);
    assertThat(lines.get(1)).startsWith("1,corn,tall-108,1,-2.6670,1.0000,");
  }

  @Test
  void faultsOfCanopyAndResponseComeTogether() {
    List<Fault> faults =
        catchThrowableOfType(
                RejectedException.class,
                () -> forecast(PLAN.replace("crop: soybean", "crop: sorghum")))
            .faults();
    assertThat(faults)
        .extracting(Fault::what)
        .containsExactly(
            "nothing is known of the canopy of sorghum",
            "nothing is known of how the yield of sorghum answers to light");
  }
}
