package org.lynchet.prescription.plan;

import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import org.lynchet.prescription.plan.PlannedSetback.Neighbour;
import org.lynchet.prescription.plan.PlannedSetback.Side;
import org.lynchet.prescription.quantity.Length;

/** Reads the section {@code setback}. */
final class SetbackSection {
  private SetbackSection() {}

  static PlannedSetback read(KeyReader plan) {
    return plan.find("setback", KeyReader.keys(SetbackSection::setback))
        .orElse(PlannedSetback.NONE);
  }

  private static Optional<PlannedSetback> setback(KeyReader keys) {
    return Optional.of(
        new PlannedSetback(
            keys.find("sides", KeyReader.keys(SetbackSection::sides)).orElse(Map.of()),
            keys.find(
                    "neighbours",
                    KeyReader.names(
                        NameText::name, name -> KeyReader.keys(SetbackSection::neighbour)))
                .orElse(new LinkedHashMap<>())));
  }

  private static Optional<Map<Side, Length>> sides(KeyReader keys) {
    Map<Side, Length> sides = new EnumMap<>(Side.class);
    for (Side side : Side.values()) {
      keys.find(side.name().toLowerCase(Locale.ROOT), QuantityText.SETBACK)
          .ifPresent(distance -> sides.put(side, distance));
    }
    return Optional.of(sides);
  }

  private static Optional<Neighbour> neighbour(KeyReader keys) {
    Optional<String> file = keys.get("file", NameText::file);
    Optional<Length> distance = keys.find("distance", QuantityText.SETBACK);
    return file.map(name -> new Neighbour(name, distance.orElse(null)));
  }
}
