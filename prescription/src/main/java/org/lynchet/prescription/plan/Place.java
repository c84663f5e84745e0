package org.lynchet.prescription.plan;

import org.jspecify.annotations.Nullable;

/**
 * Where a value stands in a plan file.
 *
 * <p>It knows its own step only and asks the place above for the rest, so that a file of many
 * values costs no more memory than its text.
 *
 * @param above the place of the keys or the list that hold it, or null for the whole plan
 * @param step the key or {@code [index]} that leads to it
 * @param line its line, from 1
 * @param column its column, from 1
 */
record Place(@Nullable Place above, String step, int line, int column) {

  /** The place of the key of a value in this one. */
  Place key(String name, int keyLine, int keyColumn) {
    return new Place(this, name, keyLine, keyColumn);
  }

  /** The place of an item in this list. */
  Place item(int index, int itemLine, int itemColumn) {
    return new Place(this, "[" + index + "]", itemLine, itemColumn);
  }

  /** The same key, at the line and column of its value. */
  Place moved(int newLine, int newColumn) {
    return new Place(above, step, newLine, newColumn);
  }

  /** The keys that lead here, such as {@code strips[1].centre.rate}; empty for the whole plan. */
  String path() {
    if (above == null) {
      return "";
    }
    String before = above.path();
    String shown = Shown.clipped(step);
    return before.isEmpty() || step.startsWith("[") ? before + shown : before + "." + shown;
  }
}
