package org.lynchet.formats;

import java.util.Arrays;

/** Judges the names in a .zip. */
final class ZipName {
  private static final int MAX_SHOWN = 80;

  private ZipName() {}

  /** Whether a name could lead out of the folder that it is unpacked in. */
  static boolean isTrap(String name) {
    return name.isEmpty()
        || name.startsWith("/")
        || name.indexOf('\\') >= 0
        || name.matches("[A-Za-z]:.*")
        || name.chars().anyMatch(Character::isISOControl)
        || Arrays.asList(name.split("/", -1)).contains("..");
  }

  /** Whether it is a file that some systems add and nobody means. */
  static boolean isLeftover(String name) {
    return name.startsWith("__MACOSX/")
        || name.substring(name.lastIndexOf('/') + 1).startsWith("._");
  }

  /** The name without what would disturb a screen. */
  static String shown(String name) {
    return Excerpt.of(name.replaceAll("\\p{Cntrl}", "?"), MAX_SHOWN);
  }
}
