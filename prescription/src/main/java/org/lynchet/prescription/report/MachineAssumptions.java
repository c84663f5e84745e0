package org.lynchet.prescription.report;

import java.util.ArrayList;
import java.util.List;
import org.lynchet.prescription.defaults.Defaults;
import org.lynchet.prescription.machine.Combine;
import org.lynchet.prescription.machine.Handling;
import org.lynchet.prescription.machine.Machine;
import org.lynchet.prescription.machine.Planter;
import org.lynchet.prescription.machine.Sprayer;
import org.lynchet.prescription.plan.Plan;

/** Lists how machines are driven: what the plan tells, and what is common practice. */
final class MachineAssumptions {
  private final Plan plan;
  private final List<Assumption> all = new ArrayList<>();

  private MachineAssumptions(Plan plan) {
    this.plan = plan;
  }

  static List<Assumption> of(Plan plan) {
    MachineAssumptions machines = new MachineAssumptions(plan);
    plan.machines().values().forEach(machines::add);
    return machines.all;
  }

  private void add(Machine machine) {
    if (machine instanceof Planter planter) {
      add(machine.name(), planter.handling(), "driving.planter.");
    } else if (machine instanceof Sprayer sprayer) {
      add(machine.name(), sprayer.handling(), "driving.sprayer.");
    } else if (machine instanceof Combine combine) {
      add(machine.name(), combine.handling(), "driving.combine.");
    }
  }

  private void add(String name, Handling by, String folder) {
    String turnTime =
        NumberWords.plain(by.turnTime().amount()) + " " + by.turnTime().unit().symbol();
    List<Assumption> parts =
        List.of(
            one(
                by,
                "speed",
                plan.shownUnits().written(by.speed()),
                folder + "speed-miles-per-hour"),
            one(by, "turn-time", turnTime, folder + "turn-time-seconds"),
            one(
                by,
                "turn-radius",
                plan.shownUnits().written(by.turnRadius()),
                folder + "turn-radius-feet"));
    for (Assumption joined : Assumption.joined(parts, name + ", ", "")) {
      all.add(
          new Assumption(
              joined.what(),
              joined.value(),
              joined.source(),
              "machines." + name + "." + joined.change()));
    }
  }

  private static Assumption one(Handling by, String key, String value, String byDefault) {
    String source = by.told().contains(key) ? Assumption.PLAN : Defaults.get().source(byDefault);
    return new Assumption(key.replace('-', ' '), value, source, key);
  }
}
