package org.lynchet.prescription.convert;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.lynchet.formats.Fault;
import org.lynchet.formats.FormatException;
import org.lynchet.formats.isoxml.TaskData;
import org.lynchet.formats.isoxml.TaskSet;

/**
 * Fields as task data.
 *
 * @param set with a field for each feature that has an area
 */
record ConvertedFields(TaskSet set) implements Converted {
  @Override
  public int count() {
    return set.partFields().size();
  }

  @Override
  public void write(Path file) throws IOException {
    TaskData.writePacked(set, file);
  }

  @Override
  public List<String> differences(Path file) {
    List<String> differences = new ArrayList<>();
    TaskData.check(file).forEach(fault -> differences.add(fault.what() + ", " + fault.where()));
    try {
      if (!TaskData.read(file).equals(set)) {
        differences.add("it does not read back as it was meant");
      }
    } catch (FormatException e) {
      e.faults().stream().map(Fault::what).forEach(differences::add);
    }
    return differences;
  }
}
