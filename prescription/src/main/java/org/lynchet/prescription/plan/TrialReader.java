package org.lynchet.prescription.plan;

import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;
import org.lynchet.prescription.plan.PlanNode.Listing;
import org.lynchet.prescription.plan.PlanNode.Mapping;
import org.lynchet.prescription.plan.SeedingTrials.Curve;
import org.lynchet.prescription.plan.SeedingTrials.TrialPlot;
import org.lynchet.prescription.quantity.GrainUnit;
import org.lynchet.prescription.quantity.GrainYield;
import org.lynchet.prescription.quantity.SeedingRate;
import org.lynchet.prescription.quantity.Shrink;

/** Reads the seeding trials of one product: a list of plots, or plots with a curve. */
final class TrialReader {
  private final ValueReader<SeedingRate> rate;
  private final GrainReader grain;
  private final @Nullable GrainUnit sold;

  /**
   * A reader.
   *
   * @param rate reads the rates of the product
   * @param grain takes yields to what is sold
   * @param sold the unit of its price, or null if not known
   */
  TrialReader(ValueReader<SeedingRate> rate, GrainReader grain, @Nullable GrainUnit sold) {
    this.rate = rate;
    this.grain = grain;
    this.sold = sold;
  }

  Optional<SeedingTrials> read(PlanNode node, PlanFaults faults) {
    if (!(node instanceof Mapping)) {
      return plots(node, faults, Curve.PARABOLA);
    }
    return KeyReader.keys(
            keys -> {
              // A curve that could not be read keeps no plots from being judged.
              Curve other = keys.has("curve") ? Curve.TESTED_RATES : Curve.PARABOLA;
              Curve curve = keys.find("curve", WordText.oneOf(Curve.class)).orElse(other);
              return keys.get("plots", (plots, all) -> plots(plots, all, curve));
            })
        .read(node, faults);
  }

  private Optional<SeedingTrials> plots(PlanNode node, PlanFaults faults, Curve curve) {
    Optional<List<TrialPlot>> read =
        ValueReader.listOf(KeyReader.keys(this::plot)).read(node, faults);
    if (read.isEmpty() || read.get().size() < ((Listing) node).items().size()) {
      return Optional.empty();
    }
    List<TrialPlot> plots = read.get();
    if (distinct(plots, plot -> plot.rate().perSquareMetre()) < curve.fewestRates()) {
      String few = curve.fewestRates() == 2 ? "two" : "three";
      faults.add(
          node.place(),
          "the trials have fewer than " + few + " rates",
          "with curve: " + curve + ", yields at " + few + " different rates or more",
          "add plots, or remove the trials");
      return Optional.empty();
    }
    if (distinct(plots, plot -> plot.grown().unit()) > 1) {
      faults.add(
          node.place(),
          "the trials' yields are in different units",
          "yields in one unit",
          "write all in bushels or all in tonnes");
      return Optional.empty();
    }
    return Optional.of(new SeedingTrials(curve, plots));
  }

  private static long distinct(List<TrialPlot> plots, Function<TrialPlot, Object> value) {
    return plots.stream().map(value).distinct().count();
  }

  private Optional<TrialPlot> plot(KeyReader keys) {
    Optional<SeedingRate> planted = keys.get("rate", rate);
    Optional<GrainYield> grown = keys.get("yield", MoneyText.YIELD);
    Optional<Shrink> shrink = grain.shrink(keys);
    if (planted.isEmpty() || grown.isEmpty() || shrink.isEmpty()) {
      return Optional.empty();
    }
    GrainUnit from = grown.get().unit();
    GrainUnit to = from.isSold() ? from : sold == null ? GrainUnit.BUSHEL : sold;
    if (!grain.canTake(from, to)) {
      keys.fault(
          "yield",
          "nothing is known of what a bushel of " + grain.crop() + " weighs",
          "in lb/ac, yields of crops whose bushel has a weight that is known",
          "write the yield in bu/ac or t/ha");
      return Optional.empty();
    }
    double amount = grown.get().amount() * grain.factor(from, to) * shrink.get().kept();
    return Optional.of(new TrialPlot(planted.get(), new GrainYield(amount, to)));
  }
}
