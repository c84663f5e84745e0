package org.lynchet.prescription.convert;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import org.lynchet.formats.FeatureTable;
import org.lynchet.formats.isoxml.TaskData;
import org.lynchet.formats.isoxml.TaskSet;
import org.lynchet.prescription.fault.Faults;
import org.lynchet.prescription.fault.RejectedException;
import org.lynchet.prescription.fault.Warning;
import org.lynchet.prescription.taskdata.PlantedField;
import org.lynchet.prescription.taskdata.RateTable;
import org.lynchet.prescription.taskdata.SentNames;
import org.lynchet.prescription.taskdata.TaskSetMaker;

/**
 * Fields, or one field with its treatment zones, as task data.
 *
 * @param count how many features went into it
 */
record ConvertedTaskData(TaskSet set, int count) implements Converted {

  /**
   * What a table is as task data.
   *
   * @param file what it is called in faults
   * @param warnings takes what is left out, cut or rounded
   * @param faults takes what of fields cannot be in task data
   * @throws RejectedException with all faults of treatment zones
   */
  static Converted of(FeatureTable table, String file, List<Warning> warnings, Faults faults)
      throws RejectedException {
    if (!PlantedTable.isOne(table)) {
      TaskSet fields = new FieldSet(table, file, warnings, faults).make();
      return new ConvertedTaskData(fields, fields.partFields().size());
    }
    PlantedField field = new PlantedTable(table, file, warnings).make();
    warnings.addAll(SentNames.warnings(field));
    warnings.addAll(RateTable.warnings(field));
    return new ConvertedTaskData(TaskSetMaker.of(field), field.areas().size() + field.off().size());
  }

  @Override
  public void write(Path file) throws IOException {
    TaskData.writePacked(set, file);
  }

  @Override
  public List<String> differences(Path file) {
    return TaskData.differences(set, file);
  }
}
