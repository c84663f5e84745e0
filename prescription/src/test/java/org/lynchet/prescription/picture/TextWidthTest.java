package org.lynchet.prescription.picture;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.Font;
import java.awt.font.FontRenderContext;
import java.awt.geom.AffineTransform;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class TextWidthTest {

  /** Against the widths of this machine's own sans-serif font, whichever that is. */
  @ParameterizedTest
  @ValueSource(
      strings = {
        "0123456789",
        "soybean, centre, heavy",
        "tall-108 \u00b7 34,000 seeds/ac",
        "Sandhill East",
        "WIDE MOMMA",
        "and 12 more",
        "heading 90.0\u00b0 \u00b7 91.27 ac \u00b7 26 strips \u00b7 51 passes"
      })
  void isNoLessThanTheFontNeeds(String text) {
    for (int style : new int[] {Font.PLAIN, Font.BOLD}) {
      Font font = new Font(Font.SANS_SERIF, style, 10);
      double needed =
          font.getStringBounds(text, new FontRenderContext(new AffineTransform(), true, true))
              .getWidth();
      double estimate = TextWidth.of(text, 10, style == Font.BOLD);
      assertThat(estimate).as(text).isBetween(needed * 0.99, needed * 1.35);
    }
  }

  @ParameterizedTest
  @CsvSource({
    "corn, 100, corn",
    "a long name of a product, 46, a long\u2026",
    "\uD83C\uDF3D\uD83C\uDF3D\uD83C\uDF3D\uD83C\uDF3D, 33, \uD83C\uDF3D\uD83C\uDF3D\u2026",
    "xyz, 1, \u2026",
  })
  void cutsWhatIsTooLong(String text, double width, String cut) {
    assertThat(TextWidth.cut(text, width, 10, false)).isEqualTo(cut);
  }
}
