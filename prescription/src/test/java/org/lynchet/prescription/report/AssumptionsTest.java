package org.lynchet.prescription.report;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.lynchet.prescription.light.PlanLight;
import org.lynchet.prescription.plan.Plan;
import org.lynchet.prescription.plan.PlanFile;

/** What a plan says of stands, moisture and leaves is among the assumptions, with its keys. */
class AssumptionsTest {
  private static final String PLAN =
      """
      field: {name: Field, boundary: field.geojson}
      guidance: {ab-line: {through: [-94.1, 43.55], heading: 0}}
      machines: {corn-planter: {kind: planter, rows: 12, row-spacing: 30 in}}
      strips:
        - {crop: corn, planted-by: corn-planter, passes: 1, centre: {product: tall-108, rate: 30000 plants/ac}}
      products: {tall-108: {crop: corn, germination: 95 %, field-survival: 90 %}}
      forecast: {canopies: {corn: {planting: 2027-05-05, half-leaf: 2027-06-20, leaf-at-maturity: 40 %}}}
      budget: {crops: {corn: {price: 4 /bu, yield: 200 bu/ac, moisture: 18 %, handling-loss: 0.5 %}}}
      """;

  @TempDir Path folder;

  @Test
  void plansSayWhatTheyGoBy() throws Exception {
    Path file = Files.writeString(folder.resolve("plan.yaml"), PLAN);
    Plan plan = PlanFile.read(file);
    List<Assumption> all = Assumptions.of(plan, PlanLight.request(plan), List.of());
    assertThat(all)
        .contains(
            Assumption.ofPlan(
                "tall-108, seeds whose plants stand, %",
                "85.5", "products.tall-108.germination, field-survival"),
            Assumption.ofPlan(
                "corn, yield in blocks as delivered", "200 bu/ac", "budget.crops.corn.yield"),
            Assumption.ofPlan("corn, half leaf", "2027-06-20", "forecast.canopies.corn.half-leaf"),
            Assumption.ofPlan(
                "corn, leaf at maturity", "0.4", "forecast.canopies.corn.leaf-at-maturity"));
    assertThat(all)
        .filteredOn(one -> one.toString().contains("moisture delivered"))
        .singleElement()
        .satisfies(
            one ->
                assertThat(one.toString())
                    .contains("18.0 / 15.5, 0.50", "Rankin", "budget.crops.corn.moisture"));
    // The plan's own value is in place of the default.
    assertThat(all)
        .filteredOn(one -> one.change().equals("forecast.canopies.corn.half-leaf"))
        .hasSize(1);
  }
}
