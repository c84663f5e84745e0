package org.lynchet.integration.witness.shapefile;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.lynchet.integration.witness.Findings;

/** Checks the table: header, columns, rows and the byte that ends it. */
final class DbfFile {
  private static final int FIXED_HEADER = 32;

  private final FileBytes table;
  private final Findings findings;
  private final List<DbfColumn> columns = new ArrayList<>();

  private DbfFile(FileBytes table, Findings findings) {
    this.table = table;
    this.findings = findings;
  }

  static void check(FileBytes table, int shapes, Findings findings) {
    if (!table.has(0, FIXED_HEADER + 1)) {
      findings.add(ShapefileRule.TRUNCATED, table.name(), table.size() + " bytes");
      return;
    }
    DbfFile check = new DbfFile(table, findings);
    check.checkFixedHeader(shapes);
    if (check.readColumns()) {
      check.checkRows();
    }
  }

  private void checkFixedHeader(int shapes) {
    findings.addUnlessEqual(ShapefileRule.TABLE_VERSION, table.place(0), table.unsigned(0), 3);
    int month = table.unsigned(2);
    int day = table.unsigned(3);
    if (month < 1 || month > 12 || day < 1 || day > 31) {
      findings.add(ShapefileRule.TABLE_DATE, table.place(2), "month " + month + " day " + day);
    }
    findings.addUnlessEqual(ShapefileRule.TABLE_COUNT, table.place(4), table.littleInt(4), shapes);
    findings.addUnlessEqual(ShapefileRule.LANGUAGE_DRIVER, table.place(29), table.unsigned(29), 0);
  }

  /** Reads descriptors up to the end mark; false if there is none. */
  private boolean readColumns() {
    int at = FIXED_HEADER;
    Set<String> names = new HashSet<>();
    while (table.has(at, 1) && table.unsigned(at) != 0x0D) {
      if (!table.has(at, DbfColumn.DESCRIPTOR)) {
        findings.add(ShapefileRule.TABLE_HEADER_END, table.place(at), "no 0x0D ends the header");
        return false;
      }
      DbfColumn column = DbfColumn.check(table, at, findings);
      if (!names.add(column.name())) {
        findings.add(ShapefileRule.COLUMN_UNIQUE, table.place(at), column.name());
      }
      columns.add(column);
      at += DbfColumn.DESCRIPTOR;
    }
    if (!table.has(at, 1)) {
      findings.add(ShapefileRule.TABLE_HEADER_END, table.place(at), "no 0x0D ends the header");
      return false;
    }
    findings.addUnlessEqual(
        ShapefileRule.TABLE_HEADER_LENGTH,
        table.place(8),
        table.littleShort(8),
        33 + DbfColumn.DESCRIPTOR * columns.size());
    return true;
  }

  private void checkRows() {
    int header = 33 + DbfColumn.DESCRIPTOR * columns.size();
    int row = 1 + columns.stream().mapToInt(DbfColumn::width).sum();
    findings.addUnlessEqual(
        ShapefileRule.TABLE_RECORD_LENGTH, table.place(10), table.littleShort(10), row);
    int count = table.littleInt(4);
    long end = header + (long) row * count;
    if (count < 0 || end >= table.size()) {
      findings.add(
          ShapefileRule.TRUNCATED, table.name(), table.size() + " bytes, expected " + (end + 1));
      return;
    }
    for (int i = 0; i < count; i++) {
      checkRow(header + row * i, table.name() + " row " + (i + 1));
    }
    if (end + 1 != table.size() || table.unsigned((int) end) != 0x1A) {
      findings.add(
          ShapefileRule.TABLE_END,
          table.place((int) end),
          "0x" + Integer.toHexString(table.unsigned((int) end)) + ", size " + table.size());
    }
  }

  private void checkRow(int at, String where) {
    findings.addUnlessEqual(ShapefileRule.ROW_MARK, where, table.unsigned(at), (int) ' ');
    int value = at + 1;
    for (DbfColumn column : columns) {
      DbfValue.check(table.slice(value, column.width()), column, where, findings);
      value += column.width();
    }
  }
}
