package org.lynchet.formats.shapefile;

import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.charset.Charset;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.lynchet.formats.Column;
import org.lynchet.formats.FaultList;

/** Decodes the bytes of a .dbf: its header, its columns, its rows. */
final class DbfDecoder {
  private static final int HEADER_BYTES = 32;
  private static final int DESCRIPTOR_BYTES = 32;
  private static final int LANGUAGE_BYTE = 29;
  private static final byte HEADER_END = 0x0D;
  private static final DbfTable NOTHING = DbfTable.withoutColumns(0);

  private final ByteBuffer in;
  private final String cpg;
  private final String base;
  private final String place;
  private final FaultList faults;

  /**
   * @param cpg the text of the .cpg; empty for none
   * @param base what the shapefile is called in faults, without an extension
   */
  DbfDecoder(byte[] bytes, String cpg, String base, FaultList faults) {
    this.in = ByteBuffer.wrap(bytes).order(ByteOrder.LITTLE_ENDIAN);
    this.cpg = cpg;
    this.base = base;
    this.place = base + ".dbf";
    this.faults = faults;
  }

  /** The table; without rows if its header has faults. */
  DbfTable decode() {
    if (in.limit() < HEADER_BYTES + 1) {
      fault("it ends after " + in.limit() + " bytes", place, "a header of at least 33 bytes");
      return NOTHING;
    }
    Optional<Charset> charset = DbfCharset.find(cpg, in.get(LANGUAGE_BYTE) & 0xFF);
    if (charset.isEmpty()) {
      faults.add(
          "its encoding is not known: " + cpg.strip(),
          base + ".cpg",
          "UTF-8, ISO-8859-1, 1252 or another code page",
          "write UTF-8 or the right code page into the .cpg");
      return NOTHING;
    }
    List<DbfField> fields = fields(charset.get());
    return hasRoom(fields) ? new DbfTable(columns(fields), rows(fields)) : NOTHING;
  }

  private static List<Column> columns(List<DbfField> fields) {
    return fields.stream().map(DbfField::column).toList();
  }

  private List<DbfField> fields(Charset charset) {
    List<DbfField> fields = new ArrayList<>();
    Set<String> names = new HashSet<>();
    int end = Math.min(headerBytes(), in.limit());
    int offset = 1;
    int at = HEADER_BYTES;
    while (at + DESCRIPTOR_BYTES < end && in.get(at) != HEADER_END) {
      String where = place + ", column " + (fields.size() + 1);
      DbfField field = DbfField.of(in.slice(at, DESCRIPTOR_BYTES), offset, charset, where);
      field.check(faults);
      if (!names.add(field.column().name())) {
        fault("a second column named " + field.column().name(), where, "different names");
      }
      fields.add(field);
      offset += field.column().width();
      at += DESCRIPTOR_BYTES;
    }
    if (at >= end || in.get(at) != HEADER_END) {
      fault("its list of columns has no end", place, "columns of 32 bytes each, then 0D");
    }
    return fields;
  }

  /** Whether the header agrees with the columns, and the rows with the file's length. */
  private boolean hasRoom(List<DbfField> fields) {
    if (!faults.isEmpty() && fields.isEmpty()) {
      return false;
    }
    int width = 1 + fields.stream().mapToInt(f -> f.column().width()).sum();
    if (rowBytes() != width) {
      fault(
          "its header says " + rowBytes() + " bytes in a row, its columns " + width,
          place,
          "the same in both");
      return false;
    }
    long end = headerBytes() + rowCount() * rowBytes();
    if (end > in.limit()) {
      fault(
          "it ends after " + in.limit() + " of " + end + " bytes, of " + rowCount() + " rows",
          place,
          "the whole file");
      return false;
    }
    if (in.limit() - end > rowBytes()) {
      fault(
          (in.limit() - end) + " bytes after its " + rowCount() + " rows",
          place,
          "nothing after the last row");
      return false;
    }
    return true;
  }

  private List<DbfTable.Row> rows(List<DbfField> fields) {
    List<DbfTable.Row> rows = new ArrayList<>((int) rowCount());
    for (int i = 0; i < rowCount(); i++) {
      ByteBuffer row = in.slice(headerBytes() + i * rowBytes(), rowBytes());
      String where = place + ", row " + (i + 1);
      byte mark = row.get(0);
      if (mark != ' ' && mark != '*') {
        fault("it begins with byte " + (mark & 0xFF), where, "a blank, or * for a deleted row");
      }
      List<@Nullable Object> values = new ArrayList<>(fields.size());
      for (DbfField field : fields) {
        values.add(field.value(row, where, faults));
      }
      rows.add(new DbfTable.Row(mark == '*', values));
    }
    return rows;
  }

  private long rowCount() {
    return in.getInt(4) & 0xFFFF_FFFFL;
  }

  private int headerBytes() {
    return in.getShort(8) & 0xFFFF;
  }

  private int rowBytes() {
    return in.getShort(10) & 0xFFFF;
  }

  private void fault(String what, String where, String allowed) {
    faults.add(what, where, allowed, "export the shapefile again, with all of its files");
  }
}
