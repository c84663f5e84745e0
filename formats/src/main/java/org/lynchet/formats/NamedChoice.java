package org.lynchet.formats;

import java.util.List;
import java.util.function.Function;
import java.util.stream.Collectors;

/**
 * Chooses the one part of a file that is meant, by its name, or tells what there is to choose from.
 *
 * @param kind what the parts are, one of them: {@code field}
 * @param name a part's name
 * @param shown a part as it is listed
 * @param needed what a file must have that has no part at all
 * @param next how a part is named
 */
public record NamedChoice<T>(
    String kind,
    Function<? super T, String> name,
    Function<? super T, String> shown,
    String needed,
    String next) {
  private static final int MOST_LISTED = 20;

  /**
   * The part of that name.
   *
   * @param wanted the name; empty for the only part
   * @param place where faults are: the file
   * @throws FormatException unless there is exactly one
   */
  public T choose(List<T> parts, String wanted, String place) throws FormatException {
    List<T> meant =
        parts.stream().filter(p -> wanted.isEmpty() || name.apply(p).equals(wanted)).toList();
    if (meant.size() == 1) {
      return meant.get(0);
    }
    String named = wanted.isEmpty() ? "" : " " + wanted;
    throw new FormatException(
        new Fault(
            meant.isEmpty()
                ? "no " + kind + named + " in it"
                : meant.size()
                    + " "
                    + kind
                    + "s"
                    + (named.isEmpty() ? "" : " called" + named)
                    + " in it",
            place,
            parts.isEmpty() ? needed : "one of " + list(parts),
            next));
  }

  private String list(List<T> parts) {
    int more = parts.size() - MOST_LISTED;
    return parts.stream().limit(MOST_LISTED).map(shown).collect(Collectors.joining(", "))
        + (more > 0 ? " and " + more + " more" : "");
  }
}
