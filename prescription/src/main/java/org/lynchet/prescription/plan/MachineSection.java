package org.lynchet.prescription.plan;

import java.util.List;
import java.util.Optional;
import org.lynchet.prescription.machine.Combine;
import org.lynchet.prescription.machine.Handling;
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

  static Machines read(KeyReader plan) {
    return new Machines(
        plan.get("machines", KeyReader.names(NameText::name, MachineSection::machine)));
  }

  /** Reads a machine, which stays known by its name even if it has faults. */
  private static ValueReader<Optional<Machine>> machine(String name) {
    ValueReader<Machine> machine = KeyReader.keys(keys -> machine(name, keys));
    return (node, faults) -> Optional.of(machine.read(node, faults));
  }

  private static Optional<Machine> machine(String name, KeyReader keys) {
    Optional<Kind> kind = keys.get("kind", WordText.oneOf(Kind.class));
    if (kind.isEmpty()) {
      keys.leaveRest();
      return Optional.empty();
    }
    return switch (kind.get()) {
      case PLANTER -> planter(name, keys);
      case SPRAYER -> sprayer(name, keys);
      case COMBINE -> {
        Optional<Length> header = keys.get("header", QuantityText.LENGTH);
        List<String> crops = crops(keys);
        Optional<Wheels> wheels = wheels(keys);
        Handling handling = HandlingKeys.read(keys, Handling.COMBINE);
        yield header.map(width -> new Combine(name, width, crops, wheels.orElse(null), handling));
      }
      case TOOLBAR -> {
        Optional<Length> bar = keys.get("width", QuantityText.LENGTH);
        List<String> crops = crops(keys);
        Optional<Wheels> wheels = wheels(keys);
        yield bar.map(width -> new Toolbar(name, width, crops, wheels.orElse(null)));
      }
    };
  }

  private static Optional<Machine> planter(String name, KeyReader keys) {
    Optional<Integer> rows = keys.get("rows", NumberText.count(1, 1000));
    Optional<Length> spacing = keys.get("row-spacing", QuantityText.LENGTH);
    Hoppers hoppers = keys.find("hoppers", WordText.oneOf(Hoppers.class)).orElse(Hoppers.ROW_UNIT);
    Optional<RateLimits> limits = keys.find("rate-limits", KeyReader.keys(MachineSection::limits));
    Handling handling = HandlingKeys.read(keys, Handling.PLANTER);
    return rows.isPresent() && spacing.isPresent()
        ? Optional.of(
            new Planter(name, rows.get(), spacing.get(), hoppers, limits.orElse(null), handling))
        : Optional.empty();
  }

  private static Optional<RateLimits> limits(KeyReader keys) {
    Optional<SeedingRate> min = keys.get("min", QuantityText.RATE);
    Optional<SeedingRate> max = keys.get("max", QuantityText.RATE);
    if (min.isEmpty() || max.isEmpty()) {
      return Optional.empty();
    }
    double most = max.get().perSquareMetre();
    if (most == 0 || most < min.get().perSquareMetre()) {
      keys.fault(
          "max",
          most == 0 ? "the highest rate is 0" : "the highest rate is below the lowest",
          "above 0, and at least min",
          "correct max or min");
      return Optional.empty();
    }
    return Optional.of(new RateLimits(min.get(), max.get()));
  }

  private static Optional<Machine> sprayer(String name, KeyReader keys) {
    Optional<Length> boom = keys.get("boom", QuantityText.LENGTH);
    Optional<Length> section = keys.find("section", QuantityText.LENGTH);
    if (boom.isPresent() && section.isPresent() && section.get().metres() > boom.get().metres()) {
      keys.fault(
          "section",
          "a section is wider than the boom",
          "at most the width of the boom",
          "correct one of the widths");
    }
    List<String> crops = crops(keys);
    Optional<Wheels> wheels = wheels(keys);
    Handling handling = HandlingKeys.read(keys, Handling.SPRAYER);
    return boom.map(
        width ->
            new Sprayer(name, width, section.orElse(null), crops, wheels.orElse(null), handling));
  }

  private static List<String> crops(KeyReader keys) {
    return keys.find("crops", ValueReader.listOf(NameText::crop)).orElse(List.of());
  }

  private static Optional<Wheels> wheels(KeyReader keys) {
    return keys.find("wheels", KeyReader.keys(MachineSection::readWheels));
  }

  private static Optional<Wheels> readWheels(KeyReader keys) {
    Optional<Length> track = keys.get("track-width", QuantityText.LENGTH);
    Optional<Length> tyre = keys.get("tyre-width", QuantityText.LENGTH);
    return track.isPresent() && tyre.isPresent()
        ? Optional.of(new Wheels(track.get(), tyre.get()))
        : Optional.empty();
  }
}
