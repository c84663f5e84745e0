package org.lynchet.prescription.picture;

import static org.assertj.core.api.Assertions.assertThat;
import static org.lynchet.prescription.zone.SamplePlans.cornAndSoybean;
import static org.lynchet.prescription.zone.SamplePlans.field;
import static org.lynchet.prescription.zone.SamplePlans.lonLat;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Random;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.lynchet.prescription.setback.Neighbour;
import org.lynchet.prescription.setback.SprayPlan;
import org.lynchet.prescription.zone.FieldLayout;

/** No label of the spray map lies on another, whatever stands around the field. */
class SprayMapLabelsTest {
  private static final String FIELD = "POLYGON ((0 0, 73.152 0, 73.152 400, 0 400, 0 0))";

  /** What reaches above and below a baseline, in sizes. */
  private static final double ABOVE = 0.74;

  private static final double BELOW = 0.22;

  private static List<Mark.Text> texts(List<Neighbour> neighbours, double x, double y)
      throws Exception {
    FieldLayout layout =
        FieldLayout.of(cornAndSoybean().sprayer(90, 10.0).entrance(x, y).plan(), field(FIELD));
    Sheet sheet = new Sheet();
    SprayMap.of(layout, SprayPlan.of(layout, neighbours)).addMap(sheet, 0, 0, 500, 500, 1);
    return sheet.parts().get(0).marks().stream()
        .filter(Mark.Text.class::isInstance)
        .map(Mark.Text.class::cast)
        .toList();
  }

  private static Box box(Mark.Text text) {
    double width = FontWidths.get().of(text.text(), text.size(), text.bold());
    double left =
        switch (text.anchor()) {
          case START -> text.x();
          case MIDDLE -> text.x() - width / 2;
          case END -> text.x() - width;
        };
    boolean digits = text.text().chars().allMatch(Character::isDigit);
    return new Box(
        left,
        text.y() - ABOVE * text.size(),
        left + width,
        text.y() + (digits ? 0 : BELOW * text.size()));
  }

  private static void assertNoOverlap(List<Mark.Text> texts) {
    for (int i = 0; i < texts.size(); i++) {
      for (int k = 0; k < i; k++) {
        assertThat(box(texts.get(i)).overlaps(box(texts.get(k))))
            .as(texts.get(i) + " on " + texts.get(k))
            .isFalse();
      }
    }
  }

  private static Neighbour neighbour(String name, double x, double y) {
    String wkt =
        String.format(
            Locale.ROOT,
            "POLYGON ((%1$f %2$f, %3$f %2$f, %3$f %4$f, %1$f %4$f, %1$f %2$f))",
            x,
            y,
            x + 6,
            y + 6);
    return new Neighbour(name, lonLat(wkt), 10);
  }

  /** The word for the entrance lay on the name of what is beside it. */
  @Test
  void theEntranceIsBesideANeighboursName() throws Exception {
    List<Mark.Text> texts =
        texts(List.of(neighbour("organic vineyard", -12, -4), neighbour("bees", -9, -9)), -5, 0);
    assertThat(texts)
        .extracting(Mark.Text::text)
        .contains("entrance", "organic vineyard", "bees", "A", "B");
    assertNoOverlap(texts);
  }

  static IntStream seeds() {
    return IntStream.range(0, 25);
  }

  @ParameterizedTest
  @MethodSource("seeds")
  void crowdedNeighboursKeepTheirNamesApart(int seed) throws Exception {
    Random random = new Random(seed);
    List<Neighbour> neighbours = new ArrayList<>();
    for (int i = 0; i < 12; i++) {
      double x = -30 + 130 * random.nextDouble();
      double y = -40 + 480 * random.nextDouble();
      neighbours.add(neighbour("neighbour " + i + " of the farm".repeat(i % 3), x, y));
    }
    List<Mark.Text> texts = texts(neighbours, 73 * random.nextDouble(), -3);
    assertThat(texts).filteredOn(text -> text.text().startsWith("neighbour")).hasSize(12);
    assertNoOverlap(texts);
  }
}
