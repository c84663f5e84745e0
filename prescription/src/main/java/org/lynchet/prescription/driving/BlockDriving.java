package org.lynchet.prescription.driving;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import org.lynchet.prescription.machine.Machine;
import org.lynchet.prescription.machine.Planter;
import org.lynchet.prescription.machine.Sprayer;
import org.lynchet.prescription.quantity.Length;
import org.lynchet.prescription.quantity.LengthUnit;
import org.lynchet.prescription.swath.SteeredMachine;
import org.lynchet.prescription.zone.DrivenPass;
import org.lynchet.prescription.zone.FieldLayout;

/**
 * Drives a field as if its crops stood in separate blocks side by side, each with the area that its
 * strips have.
 *
 * <p>The blocks lie in the order of the pattern, left to right, and end where a pass of the strips
 * ends; what a block is therefore larger or smaller than its strips is taken out in proportion.
 */
final class BlockDriving {
  private final FieldLayout layout;
  private final Map<String, List<DrivenPass>> blocks;

  private BlockDriving(FieldLayout layout, Map<String, List<DrivenPass>> blocks) {
    this.layout = layout;
    this.blocks = blocks;
  }

  /** Shares the passes out between the blocks, each to the crop whose block has its middle. */
  static BlockDriving of(FieldLayout layout) {
    Map<String, Double> ends = new LinkedHashMap<>();
    double sum = 0;
    for (String crop : layout.passes().stream().map(DrivenPass::crop).distinct().toList()) {
      for (DrivenPass pass : layout.passes()) {
        sum += pass.crop().equals(crop) ? squareMetres(pass) : 0;
      }
      ends.put(crop, sum);
    }
    Map<String, List<DrivenPass>> blocks = new LinkedHashMap<>();
    double before = 0;
    for (DrivenPass pass : layout.passes()) {
      double middle = before + squareMetres(pass) / 2;
      before += squareMetres(pass);
      String crop = cropAt(middle, ends);
      blocks.computeIfAbsent(crop, key -> new ArrayList<>()).add(pass);
    }
    return new BlockDriving(layout, blocks);
  }

  /** The crop of the block that has a place; beyond all blocks, by rounding, that of the last. */
  private static String cropAt(double area, Map<String, Double> ends) {
    String crop = "";
    for (Map.Entry<String, Double> end : ends.entrySet()) {
      crop = end.getKey();
      if (area <= end.getValue()) {
        break;
      }
    }
    return crop;
  }

  /** Hours of what a machine does in a crop's strips, done in the crop's block. */
  double hours(CropDriving inStrips) {
    List<DrivenPass> block = blocks.get(inStrips.crop());
    Machine machine = layout.plan().machines().get(inStrips.machineName());
    if (block == null || machine == null) {
      return inStrips.chosen().drivingHours();
    }
    List<PlantedPass> passes = new MachinePasses(layout, steered(machine)).over(block);
    DrivingPlan plan = DrivingPlan.best(DrivingPlan.backAndForth(passes, inStrips.handling()));
    Set<Integer> strips =
        inStrips.chosen().trips().stream()
            .map(trip -> trip.pass().strip())
            .collect(Collectors.toSet());
    double worked =
        layout.passes().stream()
            .filter(pass -> pass.crop().equals(inStrips.crop()) && strips.contains(pass.strip()))
            .filter(pass -> !(machine instanceof Planter) || pass.machine().equals(machine.name()))
            .mapToDouble(BlockDriving::squareMetres)
            .sum();
    double ofBlock = block.stream().mapToDouble(BlockDriving::squareMetres).sum();
    return plan.drivingHours() * worked / ofBlock;
  }

  private static SteeredMachine steered(Machine machine) {
    return machine instanceof Sprayer sprayer
        ? SteeredMachine.of(sprayer.boom(), sprayer.section())
        : SteeredMachine.of(new Length(machine.workingWidthMetres(), LengthUnit.METRE), null);
  }

  private static double squareMetres(DrivenPass pass) {
    return pass.rowLengthMetres() / pass.pass().rows() * width(pass);
  }

  private static double width(DrivenPass pass) {
    return pass.pass().rightMetres() - pass.pass().leftMetres();
  }
}
