package org.lynchet.formats.isoxml;

import java.time.LocalDate;
import java.util.List;
import org.lynchet.formats.Characters;
import org.lynchet.formats.FeatureReader;
import org.lynchet.formats.FeatureWriter;
import org.lynchet.formats.FileFormat;
import org.lynchet.formats.TableLimits;

/** What there is to know of task data: it holds fields, lines and tasks, no tables of features. */
final class TaskDataFormat implements FileFormat {
  @Override
  public List<String> endings() {
    return List.of(".zip");
  }

  @Override
  public List<String> readEndings() {
    return List.of(".zip", ".xml");
  }

  @Override
  public boolean hasParts() {
    return true;
  }

  @Override
  public FeatureReader reader(String part) {
    return TaskData.tableReader(part);
  }

  @Override
  public FeatureWriter writer(LocalDate date) {
    throw new IllegalArgumentException("task data holds no table");
  }

  @Override
  public TableLimits limits() {
    return TableLimits.of(Characters.XML);
  }
}
