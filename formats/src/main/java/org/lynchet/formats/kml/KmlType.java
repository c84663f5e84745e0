package org.lynchet.formats.kml;

import org.lynchet.formats.Column;

/** Tells the types of a schema's columns. */
final class KmlType {
  private KmlType() {}

  /** The type of a kind of column. */
  static String of(Column.Kind kind) {
    return switch (kind) {
      case TEXT -> "string";
      case NUMBER -> "double";
      case FLAG -> "bool";
    };
  }

  /** The column of a name and a type; of texts for types that are not known. */
  static Column column(String name, String type) {
    return switch (type) {
      case "int", "uint", "short", "ushort", "float", "double" -> Column.number(name, 18, 9);
      case "bool" -> Column.flag(name);
      default -> Column.text(name, 254);
    };
  }
}
