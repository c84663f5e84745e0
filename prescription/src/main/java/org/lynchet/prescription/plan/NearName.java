package org.lynchet.prescription.plan;

import java.util.Collection;
import java.util.Optional;

/** Finds the name that somebody most likely meant: at most two letters off. */
final class NearName {
  private static final int FARTHEST = 2;

  private NearName() {}

  static Optional<String> among(Collection<String> names, String wanted) {
    String nearest = null;
    int least = FARTHEST + 1;
    for (String name : names) {
      if (Math.abs(name.length() - wanted.length()) <= FARTHEST) {
        int distance = distance(name, wanted);
        if (distance < least && distance < wanted.length()) {
          least = distance;
          nearest = name;
        }
      }
    }
    return Optional.ofNullable(nearest);
  }

  /** A hint for the end of a sentence, or nothing. */
  static String hint(Collection<String> names, String wanted) {
    return among(names, wanted)
        .map(name -> "; did you mean " + Shown.quoted(name) + "?")
        .orElse("");
  }

  /** Levenshtein's distance: insertions, deletions and replacements. */
  private static int distance(String a, String b) {
    int[] row = new int[b.length() + 1];
    for (int j = 0; j <= b.length(); j++) {
      row[j] = j;
    }
    for (int i = 1; i <= a.length(); i++) {
      int diagonal = row[0];
      row[0] = i;
      for (int j = 1; j <= b.length(); j++) {
        int replace = diagonal + (a.charAt(i - 1) == b.charAt(j - 1) ? 0 : 1);
        diagonal = row[j];
        row[j] = Math.min(replace, Math.min(row[j], row[j - 1]) + 1);
      }
    }
    return row[b.length()];
  }
}
