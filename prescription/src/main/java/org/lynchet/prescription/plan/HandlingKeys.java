package org.lynchet.prescription.plan;

import org.lynchet.prescription.machine.Handling;

/** Reads the keys of a machine that say how it is driven, all optional. */
final class HandlingKeys {
  private HandlingKeys() {}

  /**
   * Reads the keys.
   *
   * @param other what holds for keys that are not there
   */
  static Handling read(KeyReader keys, Handling other) {
    return new Handling(
        keys.find("speed", QuantityText.SPEED).orElse(other.speed()),
        keys.find("efficiency", QuantityText.EFFICIENCY).orElse(other.efficiency()),
        keys.find("turn-time", QuantityText.TIME).orElse(other.turnTime()),
        keys.find("turn-radius", QuantityText.LENGTH).orElse(other.turnRadius()));
  }
}
