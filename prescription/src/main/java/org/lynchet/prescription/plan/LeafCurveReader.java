package org.lynchet.prescription.plan;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import org.lynchet.prescription.plan.PlanNode.Scalar;

/** Reads when leaf area comes and goes: days, or shares of the season. */
final class LeafCurveReader {
  private LeafCurveReader() {}

  /** Reads the keys of a leaf curve among those of a canopy, and checks their order. */
  static LeafCurve read(KeyReader keys) {
    Map<String, SeasonTime> times = new LinkedHashMap<>();
    for (String key : new String[] {"half-leaf", "full-leaf", "decline-from"}) {
      keys.find(key, LeafCurveReader::time).ifPresent(time -> add(key, time, times, keys));
    }
    return new LeafCurve(
        times.get("half-leaf"),
        times.get("full-leaf"),
        times.get("decline-from"),
        keys.find("leaf-at-maturity", QuantityText.SHARE).orElse(null));
  }

  private static void add(
      String key, SeasonTime time, Map<String, SeasonTime> before, KeyReader keys) {
    before.entrySet().stream()
        .filter(earlier -> earlier.getValue().isSurelyNotBefore(time))
        .findFirst()
        .ifPresent(
            earlier ->
                keys.fault(
                    key,
                    key + " is not after " + earlier.getKey(),
                    "half-leaf, then full-leaf, then decline-from",
                    "correct one of the two"));
    before.put(key, time);
  }

  private static Optional<SeasonTime> time(PlanNode node, PlanFaults faults) {
    String text = node instanceof Scalar scalar ? scalar.text() : "";
    if (text.endsWith("%")) {
      return QuantityText.SHARE.read(node, faults).map(SeasonTime.Share::new);
    }
    if (text.matches("[0-9]+-[0-9]+-[0-9]+")) {
      return DateText.read(node, faults).map(SeasonTime.Day::new);
    }
    faults.add(
        node.place(),
        node.kind() + " is neither a day nor a share of the season",
        "year-month-day, or a share of the days from planting, 0 %, to maturity, 100 %",
        "write it like 2027-06-28 or 43 %");
    return Optional.empty();
  }
}
