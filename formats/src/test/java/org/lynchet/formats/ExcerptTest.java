package org.lynchet.formats;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

class ExcerptTest {
  @Test
  void onlyWhatIsTooLongIsShortened() {
    assertThat(Excerpt.of("", 3)).isEmpty();
    assertThat(Excerpt.of("abc", 3)).isEqualTo("abc");
    assertThat(Excerpt.of("abcd", 3)).isEqualTo("abc...");
  }

  @Test
  void theBeginningHasNoPoints() {
    assertThat(Excerpt.start("abc", 3)).isEqualTo("abc");
    assertThat(Excerpt.start("abcd", 3)).isEqualTo("abc");
  }

  /** The Unicode Standard, 3.9: characters above U+FFFF are two code units in UTF-16. */
  @Test
  void noCharacterIsCutInTwo() {
    assertThat(Excerpt.of("ab\ud83c\udf3dcd", 3)).isEqualTo("ab...");
    assertThat(Excerpt.of("ab\ud83c\udf3dcd", 4)).isEqualTo("ab\ud83c\udf3d...");
  }
}
