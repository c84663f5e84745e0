package org.lynchet.prescription.picture;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class PageMapTest {
  /** A4 upright with margins of 10 mm, the narrower of the two papers, in points. */
  private static final double PRINTED_WIDTH = (210 - 20) / 25.4 * 72;

  static Stream<SampleLayouts> layouts() {
    return FieldMapTest.layouts();
  }

  @ParameterizedTest
  @MethodSource("layouts")
  void textsStayInView(SampleLayouts layout) {
    PageMap map = PageMap.of(layout.layout());
    for (Mark.Text text : texts(map, "")) {
      double width = TextWidth.of(text.text(), text.size(), text.bold());
      double left =
          switch (text.anchor()) {
            case START -> text.x();
            case MIDDLE -> text.x() - width / 2;
            case END -> text.x() - width;
          };
      assertThat(left).as(text.text()).isGreaterThanOrEqualTo(map.view().left());
      assertThat(left + width).as(text.text()).isLessThanOrEqualTo(map.view().right());
      assertThat(text.y() - text.size() * TextWidth.DIGIT_HEIGHT)
          .as(text.text())
          .isGreaterThanOrEqualTo(map.view().top());
      assertThat(text.y()).as(text.text()).isLessThanOrEqualTo(map.view().bottom());
    }
  }

  @Test
  void theLegendIsPrintedInSevenPointsAndMore() {
    PageMap map = PageMap.of(SampleLayouts.sample().withManagementZones().layout());
    double scale = PRINTED_WIDTH / map.view().width();
    assertThat(texts(map, "legend"))
        .isNotEmpty()
        .allSatisfy(text -> assertThat(scale * text.size()).isGreaterThanOrEqualTo(7));
  }

  /** The texts of a layer, or of all of them. */
  private static List<Mark.Text> texts(PageMap map, String layer) {
    return map.scene().layers().stream()
        .filter(one -> layer.isEmpty() || one.id().equals(layer))
        .flatMap(one -> one.marks().stream())
        .filter(Mark.Text.class::isInstance)
        .map(Mark.Text.class::cast)
        .toList();
  }
}
