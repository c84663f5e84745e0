package org.lynchet.prescription.intake;

import java.util.List;
import java.util.Optional;
import org.lynchet.formats.FeatureTable;
import org.lynchet.prescription.fault.Faults;
import org.lynchet.prescription.fault.RejectedException;
import org.lynchet.prescription.fault.Warning;

/** Reads any file of features that a plan can name, without a plan. */
public final class InputTable {
  private InputTable() {}

  /**
   * The table of a file, in longitude and latitude.
   *
   * @param name the file, relative to the working folder or absolute, with the part of it that is
   *     meant, as in a plan: {@code taskdata.zip#PFD1}, {@code taskdata.zip#TSK1}
   * @param warnings takes what deserves a second look
   * @throws RejectedException with every fault of the file
   */
  public static FeatureTable read(String name, List<Warning> warnings) throws RejectedException {
    Faults faults = new Faults();
    Optional<FeatureTable> table =
        new InputTables(NamedBy.commandLine(), faults, warnings).readZones(name, "IN");
    faults.throwIfAny();
    return table.orElseThrow();
  }

  /** How the names of files end that can be read, as a list in words. */
  public static String endings() {
    return InputTables.endings();
  }
}
