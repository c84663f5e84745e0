package org.lynchet.prescription.budget;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.lynchet.prescription.defaults.Defaults;
import org.lynchet.prescription.driving.FieldTime;
import org.lynchet.prescription.fault.Faults;
import org.lynchet.prescription.machine.Sprayer;
import org.lynchet.prescription.plan.CropMarket;
import org.lynchet.prescription.plan.ExtraCost;
import org.lynchet.prescription.plan.Plan;
import org.lynchet.prescription.plan.PlannedStrip;
import org.lynchet.prescription.plan.Seeding;
import org.lynchet.prescription.quantity.AreaUnit;
import org.lynchet.prescription.quantity.GrainUnit;
import org.lynchet.prescription.quantity.ShownUnits;
import org.lynchet.prescription.quantity.Spread;
import org.lynchet.prescription.zone.DrivenPass;
import org.lynchet.prescription.zone.FieldLayout;
import org.lynchet.prescription.zone.Zone;

/** Reads off a layout what strips change, and adds a fault for each number that the plan lacks. */
final class LayoutFacts {
  private final FieldLayout layout;
  private final Plan plan;
  private final SeedPrices seed;
  private final Faults faults;

  LayoutFacts(FieldLayout layout, SeedPrices seed, Faults faults) {
    this.layout = layout;
    this.plan = layout.plan();
    this.seed = seed;
    this.faults = faults;
  }

  /**
   * The facts; worth nothing if there are faults.
   *
   * @param changes change of yield by crop
   * @param times the times of the machines
   */
  BudgetFacts facts(Map<String, Spread> changes, List<FieldTime> times) {
    return new BudgetFacts(
        plan.budget().currency(),
        layout.areaSquareMetres(),
        crops(changes),
        moreSeed(),
        moreHours(times),
        plan.budget().machineCost(),
        plan.budget().extraCosts().stream().map(this::cost).toList());
  }

  private List<CropChange> crops(Map<String, Spread> changes) {
    List<CropChange> crops = new ArrayList<>();
    for (String crop : plan.strips().stream().map(PlannedStrip::crop).distinct().toList()) {
      CropMarket market = plan.budget().crops().get(crop);
      if (market == null) {
        faults.add(
            "nothing is known of what " + crop + " brings",
            plan.place("budget.crops"),
            "price and yield of each crop of the strips",
            "add budget.crops." + crop + ": " + example(crop) + ", with your numbers");
        continue;
      }
      crops.add(
          new CropChange(
              crop,
              stripSquareMetres(crop),
              market.unit(),
              market.yieldInBlocks(),
              changes.getOrDefault(crop, Spread.exactly(0)),
              market.price()));
    }
    return crops;
  }

  /** Numbers of about the right size, in the unit of the plan's other crops or of its rates. */
  private String example(String crop) {
    GrainUnit unit =
        plan.budget().crops().values().stream()
            .map(CropMarket::unit)
            .findFirst()
            .orElse(
                plan.shownUnits() == ShownUnits.ACRES_AND_FEET
                    ? GrainUnit.BUSHEL
                    : GrainUnit.TONNE);
    boolean bushels = unit == GrainUnit.BUSHEL;
    return switch (Defaults.get().nameOf(crop)) {
      case "corn" ->
          bushels ? "{price: 4.20 /bu, yield: 186 bu/ac}" : "{price: 165 /t, yield: 11.7 t/ha}";
      case "soybean" ->
          bushels ? "{price: 10.60 /bu, yield: 56 bu/ac}" : "{price: 390 /t, yield: 3.8 t/ha}";
      default ->
          bushels ? "{price: 6.00 /bu, yield: 80 bu/ac}" : "{price: 220 /t, yield: 5.0 t/ha}";
    };
  }

  private double stripSquareMetres(String crop) {
    return layout.zones().stream()
        .filter(zone -> zone.crop().equals(crop) && zone.kind() != Zone.Kind.HEADLAND)
        .mapToDouble(Zone::areaSquareMetres)
        .sum();
  }

  /** Blocks get the centre's product and rate where strips have a border. */
  private double moreSeed() {
    Map<Integer, PlannedStrip> strips = new HashMap<>();
    for (DrivenPass pass : layout.passes()) {
      strips.put(pass.strip(), plan.strips().get(pass.inPattern()));
    }
    double more = 0;
    for (Zone zone : layout.zones()) {
      PlannedStrip strip = strips.get(zone.strip());
      if (zone.kind() == Zone.Kind.BORDER && strip != null) {
        more += moreSeed(zone, strip.centre());
      }
    }
    return more;
  }

  private double moreSeed(Zone border, Seeding centre) {
    double centreSeeds =
        centre
            .findRate(border.managementZone())
            .map(rate -> rate.perSquareMetre() * border.areaSquareMetres())
            .orElse(0.0);
    boolean alike = border.product().equals(centre.product()) && border.seeds() == centreSeeds;
    return alike
        ? 0
        : seed.cost(border.product(), border.seeds()) - seed.cost(centre.product(), centreSeeds);
  }

  private double moreHours(List<FieldTime> times) {
    return times.stream().mapToDouble(time -> time.moreHours() * trips(time, plan)).sum();
  }

  /** How often a machine drives in a season. */
  static int trips(FieldTime time, Plan plan) {
    return plan.machines().get(time.machine()) instanceof Sprayer ? plan.budget().sprayings() : 1;
  }

  private BudgetLine cost(ExtraCost extra) {
    AreaUnit per = extra.per();
    double areas = per == null ? 1 : layout.areaSquareMetres() / per.squareMetres();
    return BudgetLine.of(extra.item(), extra.amount() * areas);
  }
}
