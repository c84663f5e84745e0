package org.lynchet.prescription.plan;

import org.lynchet.prescription.machine.Handling;

/** Reads the keys of a planter that say how it is driven, all optional. */
final class HandlingKeys {
  private HandlingKeys() {}

  static Handling read(KeyReader keys) {
    Handling other = Handling.DEFAULT;
    return new Handling(
        keys.find("speed", QuantityText.SPEED).orElse(other.speed()),
        keys.find("efficiency", QuantityText.EFFICIENCY).orElse(other.efficiency()),
        keys.find("turn-time", QuantityText.TIME).orElse(other.turnTime()),
        keys.find("turn-radius", QuantityText.LENGTH).orElse(other.turnRadius()));
  }
}
