package org.lynchet.prescription.taskdata;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.lynchet.formats.isoxml.TaskData;

/**
 * Gives guidance groups and lines names that a driver can tell apart on a terminal, within the
 * characters that task data holds.
 */
final class LineNames {
  private final Set<String> taken = new HashSet<>();

  /**
   * A name of some parts with blanks between them; where they are too long together, the longest of
   * all but the last is cut until they fit. A name that was given before is numbered.
   *
   * @param last what tells the name from others; short, never cut
   */
  String of(List<String> parts, String last) {
    String name = fitted(parts, last);
    for (int i = 2; !taken.add(name); i++) {
      name = fitted(parts, (last + " (" + i + ")").strip());
    }
    return name;
  }

  private static String fitted(List<String> parts, String last) {
    List<String> shown = new ArrayList<>(parts);
    while (joined(shown, last).length() > TaskData.LONGEST_NAME) {
      int longest = 0;
      for (int i = 1; i < shown.size(); i++) {
        if (shown.get(i).length() > shown.get(longest).length()) {
          longest = i;
        }
      }
      String part = shown.get(longest);
      int end = part.offsetByCodePoints(part.length(), -1);
      shown.set(longest, part.substring(0, end).stripTrailing());
    }
    return joined(shown, last);
  }

  private static String joined(List<String> parts, String last) {
    return (String.join(" ", parts) + " " + last).strip();
  }
}
