package org.lynchet.prescription.driving;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Collectors;
import org.lynchet.prescription.machine.Combine;
import org.lynchet.prescription.quantity.Length;
import org.lynchet.prescription.swath.SteeredMachine;
import org.lynchet.prescription.swath.Swath;
import org.lynchet.prescription.swath.Swaths;
import org.lynchet.prescription.zone.DrivenPass;
import org.lynchet.prescription.zone.FieldLayout;

/**
 * Lays the passes of a combine over the strips of a crop: as many as come nearest to the strip's
 * width, each as long as any of the planter's passes that it harvests.
 */
final class CombinePasses {
  private final FieldLayout layout;
  private final SteeredMachine combine;

  CombinePasses(FieldLayout layout, Combine combine) {
    this.layout = layout;
    long header = combine.header().tenthsOfMillimetre();
    this.combine = new SteeredMachine(header, 0);
  }

  /** The passes, left to right. */
  List<PlantedPass> of(String crop) {
    Map<Integer, List<DrivenPass>> strips =
        layout.passes().stream()
            .filter(pass -> pass.crop().equals(crop))
            .collect(Collectors.groupingBy(DrivenPass::strip, TreeMap::new, Collectors.toList()));
    List<PlantedPass> passes = new ArrayList<>();
    strips.values().forEach(planted -> harvest(planted, passes));
    return passes;
  }

  private void harvest(List<DrivenPass> planted, List<PlantedPass> passes) {
    double left = planted.get(0).pass().leftMetres();
    double right = planted.get(planted.size() - 1).pass().rightMetres();
    long width = Math.round((right - left) * Length.TENTHS_IN_A_METRE);
    Swaths swaths =
        Swaths.nearest(combine, width, layout.plan().fit().tolerance().tenthsOfMillimetre());
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

  /** Whether a row of a planter's pass is harvested by that swath. */
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
