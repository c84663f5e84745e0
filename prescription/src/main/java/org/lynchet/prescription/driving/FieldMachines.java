package org.lynchet.prescription.driving;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import org.lynchet.prescription.machine.Combine;
import org.lynchet.prescription.machine.Handling;
import org.lynchet.prescription.machine.Machine;
import org.lynchet.prescription.machine.Sprayer;
import org.lynchet.prescription.spraying.SprayPass;
import org.lynchet.prescription.swath.SteeredMachine;
import org.lynchet.prescription.zone.DrivenPass;
import org.lynchet.prescription.zone.FieldLayout;
import org.lynchet.prescription.zone.Zone;

/**
 * Works out how sprayers and combines are driven in each crop's strips; each crop is harvested by
 * the first combine of the plan that works in it. A strip over which no section of the boom may be
 * open is not driven.
 */
final class FieldMachines {
  private final FieldLayout layout;
  private final List<FieldDriving> driven = new ArrayList<>();
  private final Set<String> harvested = new HashSet<>();

  private FieldMachines(FieldLayout layout) {
    this.layout = layout;
  }

  /** By machine in the plan's order, then by crop from left to right. */
  static List<FieldDriving> of(FieldLayout layout) {
    FieldMachines machines = new FieldMachines(layout);
    List<String> crops = layout.passes().stream().map(DrivenPass::crop).distinct().toList();
    for (Machine machine : layout.plan().machines().values()) {
      for (String crop : crops) {
        machines.add(machine, crop);
      }
    }
    return machines.driven;
  }

  private void add(Machine machine, String crop) {
    if (machine instanceof Sprayer sprayer) {
      List<PlantedPass> passes =
          layout.spraying().passes().stream()
              .filter(pass -> pass.machine().equals(sprayer.name()) && pass.crop().equals(crop))
              .filter(SprayPass::sprays)
              .map(this::pass)
              .toList();
      add(sprayer.name(), crop, sprayer.handling(), passes);
    } else if (machine instanceof Combine combine
        && (combine.crops().isEmpty() || combine.crops().contains(crop))
        && harvested.add(crop)) {
      SteeredMachine header = SteeredMachine.of(combine.header(), null);
      add(
          combine.name(),
          crop,
          combine.handling(),
          new MachinePasses(layout, header).overStrips(crop));
    }
  }

  private PlantedPass pass(SprayPass pass) {
    Stretches stretches = Stretches.of(pass.line(), layout.guidance());
    return PlantedPass.of(
        pass.number(), pass.strip(), pass.offsetMetres(), stretches, layout.guidance());
  }

  private void add(String machine, String crop, Handling handling, List<PlantedPass> passes) {
    if (!passes.isEmpty()) {
      Set<Integer> strips = passes.stream().map(PlantedPass::strip).collect(Collectors.toSet());
      double width = plantedWidthMetres(crop, strips) / passes.size();
      driven.add(
          FieldDriving.of(
              machine, crop, handling, width, stripsSquareMetres(crop, strips), passes));
    }
  }

  private double plantedWidthMetres(String crop, Set<Integer> strips) {
    return layout.passes().stream()
        .filter(pass -> pass.crop().equals(crop) && strips.contains(pass.strip()))
        .mapToDouble(pass -> pass.pass().rightMetres() - pass.pass().leftMetres())
        .sum();
  }

  private double stripsSquareMetres(String crop, Set<Integer> strips) {
    return layout.zones().stream()
        .filter(zone -> zone.crop().equals(crop) && strips.contains(zone.strip()))
        .mapToDouble(Zone::areaSquareMetres)
        .sum();
  }
}
