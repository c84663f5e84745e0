package org.lynchet.prescription.plan;

import java.util.List;
import org.lynchet.prescription.machine.Handling;

/** Reads the keys of a machine that say how it is driven, all optional. */
final class HandlingKeys {
  private static final String SPEED = "speed";
  private static final String EFFICIENCY = "efficiency";
  private static final String TURN_TIME = "turn-time";
  private static final String TURN_RADIUS = "turn-radius";

  private HandlingKeys() {}

  /**
   * Reads the keys.
   *
   * @param other what holds for keys that are not there
   */
  static Handling read(KeyReader keys, Handling other) {
    return new Handling(
        keys.find(SPEED, QuantityText.SPEED).orElse(other.speed()),
        keys.find(EFFICIENCY, QuantityText.EFFICIENCY).orElse(other.efficiency()),
        keys.find(TURN_TIME, QuantityText.TIME).orElse(other.turnTime()),
        keys.find(TURN_RADIUS, QuantityText.LENGTH).orElse(other.turnRadius()),
        List.of(SPEED, EFFICIENCY, TURN_TIME, TURN_RADIUS).stream()
            .filter(key -> keys.node(key).isPresent())
            .toList());
  }
}
