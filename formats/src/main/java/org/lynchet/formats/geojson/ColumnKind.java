package org.lynchet.formats.geojson;

import java.nio.charset.StandardCharsets;
import org.jspecify.annotations.Nullable;
import org.lynchet.formats.Column;
import org.lynchet.formats.PlainDecimal;

/** Infers the kind of one column from all of its values. */
final class ColumnKind {
  private static final int NUMBER_WIDTH = 20;
  private static final int NUMBER_DECIMALS = 9;

  private boolean numbers;
  private boolean flags;
  private boolean texts;
  private int width = 1;

  void see(@Nullable Object value) {
    if (value == null) {
      return;
    }
    numbers |= value instanceof Double;
    flags |= value instanceof Boolean;
    texts |= value instanceof String;
    width = Math.max(width, text(value).getBytes(StandardCharsets.UTF_8).length);
  }

  Column column(String name) {
    return switch (kind()) {
      case NUMBER -> Column.number(name, NUMBER_WIDTH, NUMBER_DECIMALS);
      case FLAG -> Column.flag(name);
      case TEXT -> Column.text(name, width);
    };
  }

  /** The value as one of the column's kind. */
  @Nullable Object fit(@Nullable Object value) {
    return value == null || kind() != Column.Kind.TEXT ? value : text(value);
  }

  private Column.Kind kind() {
    if (numbers && !flags && !texts) {
      return Column.Kind.NUMBER;
    }
    return flags && !numbers && !texts ? Column.Kind.FLAG : Column.Kind.TEXT;
  }

  private static String text(Object value) {
    return value instanceof Double number ? PlainDecimal.of(number) : value.toString();
  }
}
