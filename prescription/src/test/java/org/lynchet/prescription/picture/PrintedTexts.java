package org.lynchet.prescription.picture;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.stream.Stream;

/** Checks that a reader can read the texts of a printed page. */
final class PrintedTexts {
  /** A quarter of an inch, what common printers leave blank; common practice, no source. */
  private static final double BLANK = 18;

  private PrintedTexts() {}

  /** All texts are on the page, and none lies on another. */
  static void check(Scene scene) {
    Box printable = new Box(0, 0, Scene.WIDTH, Scene.HEIGHT).shrunk(BLANK, BLANK);
    List<Box> boxes =
        scene.layers().stream()
            .flatMap(layer -> layer.marks().stream())
            .flatMap(mark -> mark instanceof Mark.Text text ? Stream.of(box(text)) : Stream.of())
            .toList();
    assertThat(boxes).hasSizeGreaterThan(6).allMatch(printable::contains);
    for (int i = 0; i < boxes.size(); i++) {
      for (Box other : boxes.subList(i + 1, boxes.size())) {
        assertThat(boxes.get(i).overlaps(other)).as(boxes.get(i) + " on " + other).isFalse();
      }
    }
  }

  private static Box box(Mark.Text text) {
    double width = TextWidth.of(text.text(), text.size(), text.bold());
    double left =
        switch (text.anchor()) {
          case START -> text.x();
          case MIDDLE -> text.x() - width / 2;
          case END -> text.x() - width;
        };
    return new Box(left, text.y() - TextWidth.DIGIT_HEIGHT * text.size(), left + width, text.y());
  }
}
