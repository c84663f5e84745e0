package org.lynchet.prescription.plan;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.lynchet.prescription.machine.Combine;
import org.lynchet.prescription.machine.Machine;
import org.lynchet.prescription.machine.Planter;
import org.lynchet.prescription.machine.Planter.Hoppers;
import org.lynchet.prescription.machine.Planter.RateLimits;
import org.lynchet.prescription.machine.Sprayer;
import org.lynchet.prescription.machine.Toolbar;
import org.lynchet.prescription.machine.Wheels;
import org.lynchet.prescription.quantity.Length;
import org.lynchet.prescription.quantity.SeedingRate;

/** Reads the section {@code machines}. */
final class MachineSection {
  private enum Kind {
    PLANTER,
    SPRAYER,
    COMBINE,
    TOOLBAR
  }

  private MachineSection() {}

  static Map<String, Machine> read(KeyReader plan) {
    plan.get("machines");
    return plan.findNamed("machines", MachineSection::machine);
  }

  private static Optional<Machine> machine(String name, KeyReader keys) {
    Optional<Kind> kind =
        keys.get("kind").flatMap(node -> keys.word(node, keys.pathOf("kind"), Kind.class));
    if (kind.isEmpty()) {
      return Optional.empty();
    }
    Optional<Machine> machine =
        switch (kind.get()) {
          case PLANTER -> planter(name, keys);
          case SPRAYER -> sprayer(name, keys);
          case COMBINE -> {
            Optional<Length> header = keys.getLength("header");
            List<String> crops = keys.findTexts("crops");
            Optional<Wheels> wheels = wheels(keys);
            yield header.map(width -> new Combine(name, width, crops, wheels.orElse(null)));
          }
          case TOOLBAR -> {
            Optional<Length> bar = keys.getLength("width");
            List<String> crops = keys.findTexts("crops");
            Optional<Wheels> wheels = wheels(keys);
            yield bar.map(width -> new Toolbar(name, width, crops, wheels.orElse(null)));
          }
        };
    keys.close();
    return machine;
  }

  private static Optional<Machine> planter(String name, KeyReader keys) {
    Optional<Integer> rows = keys.getCount("rows", 1);
    Optional<Length> spacing = keys.getLength("row-spacing");
    Hoppers hoppers = keys.findWord("hoppers", Hoppers.class).orElse(Hoppers.ROW_UNIT);
    Optional<RateLimits> limits = keys.findKeys("rate-limits").flatMap(MachineSection::limits);
    return rows.isPresent() && spacing.isPresent()
        ? Optional.of(new Planter(name, rows.get(), spacing.get(), hoppers, limits.orElse(null)))
        : Optional.empty();
  }

  private static Optional<RateLimits> limits(KeyReader keys) {
    Optional<SeedingRate> min = keys.getRate("min");
    Optional<SeedingRate> max = keys.getRate("max");
    keys.close();
    if (min.isEmpty() || max.isEmpty()) {
      return Optional.empty();
    }
    if (min.get().perSquareMetre() > max.get().perSquareMetre()) {
      keys.fault("max", "the highest rate is below the lowest", "max at least min", "swap them");
      return Optional.empty();
    }
    return Optional.of(new RateLimits(min.get(), max.get()));
  }

  private static Optional<Machine> sprayer(String name, KeyReader keys) {
    Optional<Length> boom = keys.getLength("boom");
    Optional<Length> section = keys.findLength("section");
    if (boom.isPresent() && section.isPresent() && section.get().metres() > boom.get().metres()) {
      keys.fault(
          "section", "a section is wider than the boom", "at most the boom", "check both widths");
    }
    List<String> crops = keys.findTexts("crops");
    Optional<Wheels> wheels = wheels(keys);
    return boom.map(
        width -> new Sprayer(name, width, section.orElse(null), crops, wheels.orElse(null)));
  }

  private static Optional<Wheels> wheels(KeyReader keys) {
    return keys.findKeys("wheels")
        .flatMap(
            wheels -> {
              Optional<Length> track = wheels.getLength("track-width");
              Optional<Length> tyre = wheels.getLength("tyre-width");
              wheels.close();
              return track.isPresent() && tyre.isPresent()
                  ? Optional.of(new Wheels(track.get(), tyre.get()))
                  : Optional.empty();
            });
  }
}
