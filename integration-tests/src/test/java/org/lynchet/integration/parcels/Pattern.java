package org.lynchet.integration.parcels;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.lynchet.prescription.machine.Handling;
import org.lynchet.prescription.machine.Machine;
import org.lynchet.prescription.machine.Planter;
import org.lynchet.prescription.machine.Sprayer;
import org.lynchet.prescription.plan.PlannedGuidance.AbLineIs;
import org.lynchet.prescription.plan.PlannedHeadland;
import org.lynchet.prescription.plan.PlannedStrip;
import org.lynchet.prescription.plan.PlannedStrip.Border;
import org.lynchet.prescription.plan.PlannedStrip.Sides;
import org.lynchet.prescription.plan.Seeding;
import org.lynchet.prescription.quantity.AreaUnit;
import org.lynchet.prescription.quantity.Length;
import org.lynchet.prescription.quantity.LengthUnit;
import org.lynchet.prescription.quantity.SeedingRate;

/** Patterns of strips, with what is common in either system of units; no source. */
public enum Pattern {
  /** Strips of one pass, 12 rows of 30 in and 24 of 15 in, 2 border rows of corn on each side. */
  CORN_AND_SOYBEAN(AbLineIs.PASS_CENTRE) {
    @Override
    List<Machine> planters() {
      return List.of(
          planter("corn-planter", 12, 30, LengthUnit.INCH),
          planter("bean-planter", 24, 15, LengthUnit.INCH));
    }

    @Override
    List<PlannedStrip> strips(List<String> zones) {
      return List.of(
          new PlannedStrip(
              "corn",
              "corn-planter",
              1,
              seeding("tall", 84_000, zones),
              new Border(2, Sides.BOTH, seeding("short", 89_000, zones))),
          new PlannedStrip("soybean", "bean-planter", 1, seeding("bean", 320_000, zones), null));
    }
  },

  /** The same planter and border rows for both crops, so that every strip is alike. */
  ALIKE(AbLineIs.STRIP_EDGE) {
    @Override
    List<Machine> planters() {
      return List.of(planter("corn-planter", 12, 30, LengthUnit.INCH));
    }

    @Override
    List<PlannedStrip> strips(List<String> zones) {
      Border corn = new Border(2, Sides.BOTH, seeding("short", 89_000, zones));
      Border bean = new Border(2, Sides.BOTH, seeding("early-bean", 350_000, zones));
      Seeding tall = seeding("tall", 84_000, zones);
      return List.of(
          new PlannedStrip("corn", "corn-planter", 1, tall, corn),
          new PlannedStrip("soybean", "corn-planter", 1, seeding("bean", 320_000, zones), bean));
    }
  },

  /** Three crops of one to three passes, border rows on one side. */
  THREE_CROPS(AbLineIs.STRIP_EDGE) {
    @Override
    List<Machine> planters() {
      return List.of(
          planter("corn-planter", 8, 75, LengthUnit.CENTIMETRE),
          planter("bean-planter", 12, 45, LengthUnit.CENTIMETRE),
          planter("drill", 32, 12.5, LengthUnit.CENTIMETRE));
    }

    @Override
    List<PlannedStrip> strips(List<String> zones) {
      return List.of(
          new PlannedStrip(
              "corn",
              "corn-planter",
              2,
              seeding("tall", 84_000, zones),
              new Border(3, Sides.LEFT, seeding("short", 89_000, zones))),
          new PlannedStrip(
              "soybean",
              "bean-planter",
              3,
              seeding("bean", 320_000, zones),
              new Border(1, Sides.RIGHT, seeding("early-bean", 350_000, zones))),
          new PlannedStrip("wheat", "drill", 1, seeding("wheat", 3_000_000, zones), null));
    }
  };

  private final AbLineIs abLineIs;

  Pattern(AbLineIs abLineIs) {
    this.abLineIs = abLineIs;
  }

  /** The planters. */
  abstract List<Machine> planters();

  /** One period; seeding rates differ by management zone if any are named. */
  abstract List<PlannedStrip> strips(List<String> zones);

  /** A headland of one pass of corn, around holes too. */
  PlannedHeadland headland(List<String> zones) {
    return new PlannedHeadland(1, "corn-planter", true, "corn", seeding("tall", 79_000, zones));
  }

  /** The same where rows meet the boundary at more than 30 degrees only. */
  PlannedHeadland headlandAtEnds(List<String> zones) {
    return new PlannedHeadland(
        2, "corn-planter", true, "corn", seeding("tall", 79_000, zones), 30.0);
  }

  /** What the AB line is of the first strip. */
  AbLineIs abLineIs() {
    return abLineIs;
  }

  /** The planters, and a sprayer that suits not all of their strips, by name. */
  Map<String, Machine> machines() {
    Map<String, Machine> machines = new LinkedHashMap<>();
    planters().forEach(planter -> machines.put(planter.name(), planter));
    Length boom = new Length(27, LengthUnit.METRE);
    Length section = new Length(3, LengthUnit.METRE);
    machines.put(
        "sprayer", new Sprayer("sprayer", boom, section, List.of(), null, Handling.SPRAYER));
    return machines;
  }

  private static Machine planter(String name, int rows, double spacing, LengthUnit unit) {
    return new Planter(
        name, rows, new Length(spacing, unit), Planter.Hoppers.ROW_UNIT, null, Handling.PLANTER);
  }

  private static Seeding seeding(String product, double seedsPerHectare, List<String> zones) {
    Map<String, SeedingRate> rates = new LinkedHashMap<>();
    for (String zone : zones) {
      double more = 1000.0 * rates.size();
      rates.put(zone, new SeedingRate(seedsPerHectare + more, AreaUnit.HECTARE));
    }
    @Nullable SeedingRate everywhere =
        zones.isEmpty() ? new SeedingRate(seedsPerHectare, AreaUnit.HECTARE) : null;
    return new Seeding(product, everywhere, rates, product + ".rate");
  }
}
