package org.lynchet.prescription.convert;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.lynchet.prescription.fault.Faults;

/** Gathers what is wrong with features, and tells each thing once with all its places. */
final class FeatureFaults {
  private static final int MOST_LISTED = 5;

  private record Kind(String what, String allowed, String next) {}

  private final Map<Kind, List<Integer>> found = new LinkedHashMap<>();

  /**
   * Adds what is wrong with a feature.
   *
   * @param feature its index
   */
  void add(int feature, String what, String allowed, String next) {
    found
        .computeIfAbsent(new Kind(what, allowed, next), kind -> new ArrayList<>())
        .add(feature + 1);
  }

  /** Tells everything as faults of a file. */
  void tell(String file, Faults faults) {
    found.forEach(
        (kind, features) ->
            faults.add(kind.what(), file + ", " + list(features), kind.allowed(), kind.next()));
  }

  private static String list(List<Integer> features) {
    int more = features.size() - MOST_LISTED;
    return (features.size() == 1 ? "feature " : "features ")
        + features.stream()
            .limit(MOST_LISTED)
            .map(String::valueOf)
            .collect(Collectors.joining(", "))
        + (more > 0 ? " and " + more + " more" : "");
  }
}
