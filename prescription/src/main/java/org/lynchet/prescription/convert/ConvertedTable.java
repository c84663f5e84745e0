package org.lynchet.prescription.convert;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import org.lynchet.formats.FeatureTable;
import org.lynchet.formats.FeatureWriter;
import org.lynchet.prescription.handoff.TableFormat;
import org.lynchet.prescription.plan.HandoffChoices.Format;

/**
 * A table in a format of tables.
 *
 * @param table fitted to the format
 * @param format any but task data
 */
record ConvertedTable(FeatureTable table, Format format) implements Converted {
  @Override
  public int count() {
    return table.features().size();
  }

  @Override
  public void write(Path file) throws IOException {
    TableFormat.writer(format, FeatureWriter.NO_DATE).write(table, file);
  }

  @Override
  public List<String> differences(Path file) {
    return TableFormat.differences(format, table, file);
  }
}
