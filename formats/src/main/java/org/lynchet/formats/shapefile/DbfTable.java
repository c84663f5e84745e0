package org.lynchet.formats.shapefile;

import java.util.Collections;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.lynchet.formats.Column;

/** What a .dbf holds. */
record DbfTable(List<Column> columns, List<Row> rows) {

  /**
   * One row.
   *
   * @param deleted whether it is marked as deleted
   */
  record Row(boolean deleted, List<@Nullable Object> values) {}

  /** As many rows without values as there are shapes. */
  static DbfTable withoutColumns(int rows) {
    return new DbfTable(List.of(), Collections.nCopies(rows, new Row(false, List.of())));
  }
}
