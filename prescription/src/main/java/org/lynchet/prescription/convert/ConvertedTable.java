package org.lynchet.prescription.convert;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import org.lynchet.formats.FeatureTable;
import org.lynchet.formats.FeatureWriter;
import org.lynchet.formats.FileFormat;
import org.lynchet.prescription.handoff.TableCheck;

/**
 * A table in a format of tables.
 *
 * @param table fitted to the format
 * @param format any but task data
 */
record ConvertedTable(FeatureTable table, FileFormat format) implements Converted {
  @Override
  public int count() {
    return table.features().size();
  }

  @Override
  public void write(Path file) throws IOException {
    format.writer(FeatureWriter.NO_DATE).write(table, file);
  }

  @Override
  public List<String> differences(Path file) {
    return TableCheck.differences(format, table, file);
  }
}
