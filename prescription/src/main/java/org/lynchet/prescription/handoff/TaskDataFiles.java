package org.lynchet.prescription.handoff;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.lynchet.formats.isoxml.TaskData;
import org.lynchet.formats.isoxml.TaskSet;
import org.lynchet.prescription.draft.Draft;
import org.lynchet.prescription.fault.Faults;
import org.lynchet.prescription.fault.RejectedException;
import org.lynchet.prescription.taskdata.RateTable;
import org.lynchet.prescription.taskdata.TaskSetMaker;
import org.lynchet.prescription.zone.FieldLayout;

/**
 * ISO 11783-10 task data of a plan, as a folder for the root of a stick and as a .zip.
 *
 * @param set what it must say
 * @param rates how rates are sent, as lines
 */
record TaskDataFiles(TaskSet set, String rates) implements WholePlan {
  /** The folder of task data below the output folder. */
  static final String FOLDER = "taskdata";

  static TaskDataFiles of(FieldLayout layout) throws RejectedException {
    return new TaskDataFiles(TaskSetMaker.of(layout), RateTable.of(layout));
  }

  @Override
  public void write(Path folder) throws IOException {
    Path below = folder.resolve(FOLDER);
    Draft.makeBelow(folder, below);
    TaskData.write(set, below);
  }

  /** Both forms are read. */
  @Override
  public List<String> differences(Path folder) {
    List<String> found = new ArrayList<>();
    for (String file : List.of(TaskData.XML, TaskData.ZIP)) {
      String path = FOLDER + "/" + file;
      TaskData.differences(set, folder.resolve(path))
          .forEach(what -> found.add(path + ": " + what));
    }
    return found;
  }

  /** Adds everything wrong in the task data of an output folder, if it has any. */
  static void check(Path folder, Faults faults) {
    Path xml = folder.resolve(FOLDER).resolve(TaskData.XML);
    if (Files.exists(xml)) {
      TaskData.check(xml).forEach(f -> faults.add(f.what(), f.where(), f.allowed(), f.next()));
    }
  }

  @Override
  public String readme() {
    return """
          taskdata/TASKDATA.zip    ISO 11783-10 task data, one planned task for each crop; the folder
                                   taskdata/TASKDATA is the same, for the root of a stick; with the
                                   AB line or curve, and a line for each pass and spray pass
        """
        + rates.indent(2);
  }
}
