package org.lynchet.prescription.picture;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.lynchet.prescription.budget.BudgetFacts;
import org.lynchet.prescription.budget.CropChange;
import org.lynchet.prescription.budget.StripBudget;
import org.lynchet.prescription.quantity.GrainUnit;
import org.lynchet.prescription.quantity.Spread;

class BudgetChartTest {
  @TempDir Path folder;

  private static StripBudget budget(int crops, double size) {
    List<CropChange> changes = new ArrayList<>();
    for (int i = 0; i < crops; i++) {
      changes.add(
          new CropChange(
              "crop-with-a-rather-long-name-" + i,
              size * 1e5,
              GrainUnit.TONNE,
              new Spread(4, 5, 6),
              new Spread(-0.03 * i, 0.05 - 0.04 * i, 0.1),
              new Spread(100, 200, 250)));
    }
    Spread hour = new Spread(100, 150, 200);
    return StripBudget.of(
        new BudgetFacts("a currency that is long", 1e5, changes, 3, 2, hour, List.of()));
  }

  private static List<Scene> scenes() {
    StripBudget certain =
        StripBudget.of(new BudgetFacts("USD", 1e5, List.of(), 0, 0, null, List.of()));
    return List.of(
        BudgetChart.ofSwings(budget(2, 1), "Field").scene(),
        BudgetChart.ofSwings(budget(5, 1000), "n".repeat(300)).scene(),
        BudgetChart.ofSwings(budget(1, 0.001), "Field").scene(),
        BudgetChart.ofSwings(certain, "Field").scene());
  }

  @Test
  void textsStayOnThePageAndApartFromEachOther() {
    scenes().forEach(PrintedTexts::check);
  }

  /** Bars are on one scale: as long, from the line of the typical net, as what they change. */
  @Test
  void barsAreAsLongAsTheNetChanges() {
    StripBudget budget = budget(2, 1);
    List<Double> widths =
        BudgetChart.ofSwings(budget, "Field").scene().layers().stream()
            .filter(layer -> layer.id().equals("bars"))
            .flatMap(layer -> layer.marks().stream())
            .flatMap(mark -> mark instanceof Mark.Area area ? Stream.of(width(area)) : Stream.of())
            .toList();
    double all = widths.get(widths.size() - 1);
    double points = all / (budget.net().high() - budget.net().low());
    for (int i = 0; i < budget.swings().size(); i++) {
      double low = Math.abs(budget.swings().get(i).netAtLow() - budget.net().typical());
      double high = Math.abs(budget.swings().get(i).netAtHigh() - budget.net().typical());
      assertThat(widths.get(2 * i) / points).isCloseTo(low, within(0.02));
      assertThat(widths.get(2 * i + 1) / points).isCloseTo(high, within(0.02));
    }
  }

  private static double width(Mark.Area area) {
    return area.outline().parts().get(0).get(1).x - area.outline().parts().get(0).get(0).x;
  }

  @Test
  void theSameBudgetGivesTheSameFile() throws Exception {
    BudgetChart.ofSwings(budget(2, 1), "A & B <c>").writeSvg(folder.resolve("a.svg"));
    BudgetChart.ofSwings(budget(2, 1), "A & B <c>").writeSvg(folder.resolve("b.svg"));
    assertThat(folder.resolve("a.svg")).hasSameBinaryContentAs(folder.resolve("b.svg"));
    assertThat(Files.readString(folder.resolve("a.svg"))).contains("A &amp; B &lt;c&gt;");
  }

  /** Ticks are 1, 2 or 5 times a power of ten apart, at most nine, 0 among them. */
  @Test
  void ticksAreRound() {
    assertThat(new MoneyScale(-3631, 512, 0, 1).ticks())
        .containsExactly(-3000.0, -2000.0, -1000.0, 0.0);
    assertThat(new MoneyScale(-1, 1, 0, 1).ticks()).containsExactly(-1.0, -0.5, 0.0, 0.5, 1.0);
    assertThat(new MoneyScale(-5, 140_000, 0, 1).ticks()).contains(0.0, 20_000.0).hasSize(8);
  }
}
