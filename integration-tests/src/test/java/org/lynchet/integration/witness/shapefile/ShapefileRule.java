package org.lynchet.integration.witness.shapefile;

/** The rules that a shapefile of polygons in WGS 84 is held to. */
public enum ShapefileRule {
  /** .shp, .shx and .dbf make a shapefile; .prj and .cpg are wanted too, all in lower case. */
  FILES,
  /** Nothing is cut off: every file is as long as its own numbers say. */
  TRUNCATED,
  /** Bytes 0 to 3 are 9994, big-endian. */
  FILE_CODE,
  /** Bytes 4 to 23 are zero. */
  UNUSED,
  /** The file length counts 16-bit words, header included. */
  FILE_LENGTH,
  /** Bytes 28 to 31 are 1000, little-endian. */
  VERSION,
  /** Every shape is a polygon, type 5. Stricter: null shapes are not wanted. */
  SHAPE_TYPE,
  /** The box is the least and greatest x and y of what it covers; z and m are zero. */
  BOX,
  /** Record numbers begin at 1 and rise by one. */
  RECORD_NUMBER,
  /** The content length counts 16-bit words without the record header. */
  CONTENT_LENGTH,
  /** Parts begin at point 0, rise, and stay below the number of points. */
  PARTS,
  /** Numbers are finite. */
  FINITE,
  /** Stricter: x is a longitude and y a latitude. */
  LON_LAT,
  /** The last point of a ring is its first. */
  RING_CLOSED,
  /** A ring has at least four points. */
  RING_POINTS,
  /** A part has an area. */
  RING_AREA,
  /** Outer rings run clockwise. */
  OUTER_CLOCKWISE,
  /** Holes run counter-clockwise. */
  HOLE_COUNTER_CLOCKWISE,
  /** Rings neither cross themselves or each other nor share a segment. */
  CLEAN,
  /** The index file has one entry per record. */
  INDEX_COUNT,
  /** Index offsets are those of the record headers, in words; the first is 50. */
  INDEX_OFFSET,
  /** Index content lengths are those of the records. */
  INDEX_LENGTH,
  /** The table says version 3, dBASE III without memo. */
  TABLE_VERSION,
  /** The date of the table is a day. */
  TABLE_DATE,
  /** One row per shape. */
  TABLE_COUNT,
  /** The table's header is 33 bytes and 32 per column. */
  TABLE_HEADER_LENGTH,
  /** A row is one byte and the widths of its columns. */
  TABLE_RECORD_LENGTH,
  /** 0x0D ends the table's header. */
  TABLE_HEADER_END,
  /** 0x1A ends the table. */
  TABLE_END,
  /** Stricter: the language driver is 0, since .cpg names the encoding. */
  LANGUAGE_DRIVER,
  /** At most ten of A-Z, 0-9 and _, a letter first, padded with zeros; stricter than dBASE. */
  COLUMN_NAME,
  /** Column names differ. */
  COLUMN_UNIQUE,
  /** C 1 to 254, N 1 to 20 with room for its decimals, L 1, D 8. */
  COLUMN_TYPE,
  /** A row begins with a blank; an asterisk would mean deleted. */
  ROW_MARK,
  /** Numbers stand right, with exactly their decimals, and never as asterisks or blank. */
  NUMBER,
  /** Text stands left, padded with blanks, in UTF-8 without control characters. */
  TEXT,
  /** L is T or F, D is YYYYMMDD. */
  VALUE,
  /** The .prj is the one line that ESRI well-known text has for WGS 84 longitude and latitude. */
  PROJECTION,
  /** The .cpg says UTF-8. */
  ENCODING
}
