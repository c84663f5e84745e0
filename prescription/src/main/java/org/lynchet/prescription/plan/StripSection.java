package org.lynchet.prescription.plan;

import java.util.List;
import java.util.Optional;
import org.lynchet.prescription.machine.Planter;
import org.lynchet.prescription.machine.Planter.Hoppers;
import org.lynchet.prescription.plan.PlannedStrip.Border;
import org.lynchet.prescription.plan.PlannedStrip.Sides;

/** Reads the section {@code strips}. */
final class StripSection {
  private final Machines machines;
  private final SeedingReader seedings;

  StripSection(Machines machines, SeedingReader seedings) {
    this.machines = machines;
    this.seedings = seedings;
  }

  Optional<List<PlannedStrip>> read(KeyReader plan) {
    return plan.get(
        "strips",
        ValueReader.listOf(
            (node, faults) ->
                KeyReader.keys(keys -> strip(keys, node.place().path())).read(node, faults)));
  }

  private Optional<PlannedStrip> strip(KeyReader keys, String path) {
    Optional<String> crop = keys.get("crop", NameText::crop);
    Optional<String> plantedBy = keys.get("planted-by", machines::plantedBy);
    Optional<Planter> planter = plantedBy.flatMap(machines::findPlanter);
    Optional<Integer> passes = keys.get("passes", NumberText.count(1, 1000));
    Optional<Seeding> centre =
        keys.get(
            "centre",
            KeyReader.keys(inner -> seedings.read(inner, path + ".centre", crop, planter)));
    Optional<Border> border =
        keys.find(
            "border",
            KeyReader.keys(
                inner -> {
                  Optional<Border> read = border(inner, path + ".border", crop, planter);
                  if (planter.isPresent()) {
                    checkRows(inner, read, planter.get(), passes);
                    checkHoppers(inner, read, planter.get(), centre);
                  }
                  return read;
                }));
    return crop.isPresent() && plantedBy.isPresent() && passes.isPresent() && centre.isPresent()
        ? Optional.of(
            new PlannedStrip(
                crop.get(), plantedBy.get(), passes.get(), centre.get(), border.orElse(null)))
        : Optional.empty();
  }

  private Optional<Border> border(
      KeyReader keys, String path, Optional<String> crop, Optional<Planter> planter) {
    Optional<Integer> rows = keys.get("rows", NumberText.count(1, 1_000_000));
    Optional<Seeding> seeding = seedings.read(keys, path, crop, planter);
    Sides sides = keys.find("sides", WordText.oneOf(Sides.class)).orElse(Sides.BOTH);
    return rows.isPresent() && seeding.isPresent()
        ? Optional.of(new Border(rows.get(), sides, seeding.get()))
        : Optional.empty();
  }

  private static void checkRows(
      KeyReader keys, Optional<Border> border, Planter planter, Optional<Integer> passes) {
    if (border.isEmpty() || passes.isEmpty()) {
      return;
    }
    int rows = planter.rows() * passes.get();
    if (border.get().rows() * 2 > rows) {
      keys.fault(
          "rows",
          border.get().rows() + " border rows on a side are more than half of the strip's " + rows,
          rows < 2 ? "no border in a strip of one row" : "1 to " + rows / 2 + " rows",
          "take fewer border rows, or more passes");
    }
  }

  private static void checkHoppers(
      KeyReader keys, Optional<Border> border, Planter planter, Optional<Seeding> centre) {
    if (border.isEmpty() || centre.isEmpty() || planter.hoppers() != Hoppers.CENTRAL) {
      return;
    }
    boolean otherProduct = !border.get().seeding().product().equals(centre.get().product());
    if (otherProduct && border.get().rows() % planter.rows() != 0) {
      keys.fault(
          "product",
          "planter "
              + Shown.quoted(planter.name())
              + " has one central hopper and cannot plant another product in part of a pass",
          "the centre's product, or a border of whole passes of " + planter.rows() + " rows",
          "take the centre's product (the rate may differ), or a planter with hoppers on its rows");
    }
  }
}
