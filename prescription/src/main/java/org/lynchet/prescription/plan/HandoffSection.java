package org.lynchet.prescription.plan;

import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import org.lynchet.prescription.plan.HandoffChoices.Format;

/** Reads the section {@code handoff}. */
final class HandoffSection {
  private static final List<Format> ALL = List.of(Format.values());

  private HandoffSection() {}

  static HandoffChoices read(KeyReader plan) {
    return plan.find("handoff", KeyReader.keys(HandoffSection::choices))
        .orElse(new HandoffChoices(false, ALL));
  }

  private static Optional<HandoffChoices> choices(KeyReader keys) {
    boolean offZones = keys.find("off-zones", WordText::flag).orElse(false);
    List<Format> formats =
        keys.find("formats", ValueReader.listOf(WordText.oneOf(Format.class))).orElse(ALL);
    if (new HashSet<>(formats).size() < formats.size()) {
      keys.fault("formats", "a format is there twice", "each format once", "remove one of them");
    }
    return Optional.of(new HandoffChoices(offZones, formats));
  }
}
