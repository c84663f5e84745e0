package org.lynchet.prescription.driving;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Collectors;
import org.lynchet.prescription.swath.SteeredMachine;
import org.lynchet.prescription.swath.Swath;
import org.lynchet.prescription.swath.Swaths;
import org.lynchet.prescription.zone.DrivenPass;
import org.lynchet.prescription.zone.FieldLayout;

/**
 * Lays the passes of a machine over those of planters, side by side: as many as come nearest to
 * their width, each as long as any of the planters' passes under it.
 */
final class MachinePasses {
  private static final double TENTHS_IN_A_METRE = 10_000;

  private final FieldLayout layout;
  private final SteeredMachine machine;

  MachinePasses(FieldLayout layout, SteeredMachine machine) {
    this.layout = layout;
    this.machine = machine;
  }

  /** The passes over the strips of a crop, left to right. */
  List<PlantedPass> overStrips(String crop) {
    Map<Integer, List<DrivenPass>> strips =
        layout.passes().stream()
            .filter(pass -> pass.crop().equals(crop))
            .collect(Collectors.groupingBy(DrivenPass::strip, TreeMap::new, Collectors.toList()));
    List<PlantedPass> passes = new ArrayList<>();
    strips.values().forEach(planted -> lay(planted, passes));
    return passes;
  }

  /**
   * The passes over neighbouring passes of planters, whatever they plant.
   *
   * @param planted left to right, at least one
   */
  List<PlantedPass> over(List<DrivenPass> planted) {
    List<PlantedPass> passes = new ArrayList<>();
    lay(planted, passes);
    return passes;
  }

  private void lay(List<DrivenPass> planted, List<PlantedPass> passes) {
    double left = planted.get(0).pass().leftMetres();
    double right = planted.get(planted.size() - 1).pass().rightMetres();
    long width = Math.round((right - left) * TENTHS_IN_A_METRE);
    Swaths swaths =
        Swaths.nearest(machine, width, layout.plan().fit().tolerance().tenthsOfMillimetre());
    for (Swath swath : swaths.passes()) {
      List<Stretches> under =
          planted.stream()
              .filter(pass -> isUnder(pass, left, swath))
              .map(pass -> Stretches.of(pass.line(), layout.guidance()))
              .toList();
      if (!under.isEmpty()) {
        passes.add(
            PlantedPass.of(
                passes.size() + 1,
                planted.get(0).strip(),
                left + swath.centreMetres(),
                Stretches.union(under),
                layout.guidance()));
      }
    }
  }

  /** Whether a row of a planter's pass lies in that swath. */
  private static boolean isUnder(DrivenPass planted, double left, Swath swath) {
    for (int row = 1; row <= planted.pass().rows(); row++) {
      double place = planted.pass().rowMetres(row) - left;
      if (swath.leftMetres() <= place && place <= swath.rightMetres()) {
        return true;
      }
    }
    return false;
  }
}
