package org.lynchet.formats;

import org.jspecify.annotations.Nullable;

/** Which characters a format has. None has half a character, an unpaired surrogate. */
public enum Characters {
  /** All of Unicode. */
  ALL {
    @Override
    boolean has(int c) {
      return true;
    }
  },
  /** All but the zero, which ends a text. */
  NO_ZERO {
    @Override
    boolean has(int c) {
      return c != 0;
    }
  },
  /** No control characters. */
  NO_CONTROLS {
    @Override
    boolean has(int c) {
      return !Character.isISOControl(c);
    }
  },
  /** XML 1.0, section 2.2: no control characters but tab and line ends. */
  XML {
    @Override
    boolean has(int c) {
      boolean blank = c == '\t' || c == '\n' || c == '\r';
      return (c >= ' ' || blank) && c != 0xFFFE && c != 0xFFFF;
    }
  };

  abstract boolean has(int c);

  /** What kind of character a text has that the format does not; null if it has them all. */
  public @Nullable String missing(String text) {
    if (text.codePoints().anyMatch(c -> Character.getType(c) == Character.SURROGATE)) {
      return "half a character";
    }
    return text.chars().allMatch(this::has) ? null : "a control character";
  }
}
